<#-- What a result says in plain words, and beside it what it does not show.
     says    sentences about what was found
     limits  sentences about what must not be read into it
     words   labels: says, limits -->
<#macro meaning says limits words>
<div class="meaning">
  <#if says?has_content>
  <div class="meaning__part">
    <h3 class="meaning__heading">${words.says}</h3>
    <ul><#list says as line><li>${line}</li></#list></ul>
  </div>
  </#if>
  <#if limits?has_content>
  <div class="meaning__part meaning__part--limits">
    <h3 class="meaning__heading">${words.limits}</h3>
    <ul><#list limits as line><li>${line}</li></#list></ul>
  </div>
  </#if>
</div>
</#macro>
