<#-- A rule of the trade.
     anchor     where links to it arrive
     statement  the rule
     code       the id by which a case file gives a reason
     facts      weight, why, source, who holds it, what the studio changed -->
<#macro ruleEntry anchor statement code facts>
<article class="rule-entry" id="${anchor}">
  <h3 class="rule-entry__statement">${statement}</h3>
  <p class="rule-entry__code"><code>${code}</code></p>
  <dl class="rule-entry__facts">
    <#list facts as fact><div><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list>
  </dl>
</article>
</#macro>
