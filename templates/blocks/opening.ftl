<#-- The head of a page, with its only heading of the first level.
     kicker   the kind of page; may be empty
     heading  the heading
     summary  one or two sentences; may be empty
     facts    short facts: name, value
     notice   a standing notice: word, text; may be empty -->
<#macro opening kicker heading summary facts notice>
<div class="opening">
  <#if kicker?has_content><p class="opening__kicker">${kicker}</p></#if>
  <h1 class="opening__heading">${heading}</h1>
  <#if summary?has_content><p class="opening__summary">${summary}</p></#if>
  <#if facts?has_content>
  <dl class="opening__facts">
    <#list facts as fact>
    <div><dt>${fact.name}</dt><dd>${fact.value}</dd></div>
    </#list>
  </dl>
  </#if>
  <#if notice?has_content>
  <p class="opening__notice"><strong>${notice.word}.</strong> ${notice.text}</p>
  </#if>
</div>
</#macro>
