<#-- Running text; the working of a number stands below the passage that tells it first.
     passages  each with text and workings -->
<#macro prose passages>
<div class="prose">
  <#list passages as passage>
  ${passage.text}
  <#list passage.workings as working><@show working /></#list>
  </#list>
</div>
</#macro>
