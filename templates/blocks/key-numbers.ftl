<#-- The numbers that sum up a treatment, each opening to its working.
     numbers  each with number, says, cautions -->
<#macro keyNumbers numbers>
<ul class="key-numbers">
  <#list numbers as item>
  <li class="key-numbers__item">
    <p class="key-numbers__says">${item.says}</p>
    <@show item.number />
    <#list item.cautions as caution><p class="key-numbers__caution">${caution}</p></#list>
  </li>
  </#list>
</ul>
</#macro>
