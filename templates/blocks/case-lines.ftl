<#-- Many cases to choose from, one short line each.
     entries  each with title (a link), language, about -->
<#macro caseLines entries>
<ul class="case-lines">
  <#list entries as entry>
  <li><a href="${entry.title.href}"<#if entry.language != page.language> lang="${entry.language}"</#if>>${entry.title.text}</a> <span>${entry.about}</span></li>
  </#list>
</ul>
</#macro>
