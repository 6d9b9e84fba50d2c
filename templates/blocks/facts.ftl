<#-- Names and what belongs to them.
     facts  each with name and value -->
<#macro facts facts>
<dl class="facts">
  <#list facts as fact>
  <div class="facts__row"><dt>${fact.name}</dt><dd>${fact.value}</dd></div>
  </#list>
</dl>
</#macro>
