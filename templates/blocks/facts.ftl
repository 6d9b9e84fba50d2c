<#-- Names and what belongs to them.
     facts  each with name, href (where the name leads; may be left out) and value; neighbours of one name share it -->
<#macro facts facts>
<dl class="facts">
  <#list facts as fact>
  <#if fact?is_first || facts[fact?index - 1].name != fact.name>
  <div class="facts__row"><dt><#if fact.href?has_content><a href="${fact.href}">${fact.name}</a><#else>${fact.name}</#if></dt>
  </#if>
  <dd>${fact.value}</dd>
  <#if fact?is_last || facts[fact?index + 1].name != fact.name>
  </div>
  </#if>
  </#list>
</dl>
</#macro>
