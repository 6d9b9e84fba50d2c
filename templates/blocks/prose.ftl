<#-- Running text; the working of a number stands below the passage that tells it first.
     passages  each with html and workings -->
<#macro prose passages>
<div class="prose">
  <#list passages as passage>
  ${passage.html}
  <#list passage.workings as working><@show working /></#list>
  </#list>
</div>
</#macro>
