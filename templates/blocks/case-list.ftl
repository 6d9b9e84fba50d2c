<#-- Cases to choose from.
     entries  each with title (a link), language, summary (may be empty), facts, picture (may be empty), sheets (each with link and shown)
     words    fixed labels -->
<#macro caseList entries words>
<ul class="case-list">
  <#list entries as entry>
  <li class="case-list__case">
    <#if entry.picture?has_content><div class="case-list__picture"><@show entry.picture /></div></#if>
    <div class="case-list__text">
      <h3 class="case-list__title"<#if entry.language != page.language> lang="${entry.language}"</#if>><a href="${entry.title.href}">${entry.title.text}</a></h3>
      <#if entry.summary?has_content>
      <p<#if entry.language != page.language> lang="${entry.language}"</#if>>${entry.summary}</p>
      </#if>
      <dl class="case-list__facts">
        <#list entry.facts as fact><div><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list>
      </dl>
      <#if entry.sheets?has_content>
      <ul class="case-list__sheets" aria-label="${words.sheets}">
        <#list entry.sheets as sheet><li><a href="${sheet.link.href}" aria-label="${sheet.link.text}">${sheet.shown}</a></li></#list>
      </ul>
      </#if>
    </div>
  </li>
  </#list>
</ul>
</#macro>
