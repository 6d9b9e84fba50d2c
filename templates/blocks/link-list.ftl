<#-- Links, each with a line about where it leads.
     entries  each with link and about (may be empty) -->
<#macro linkList entries>
<ul class="link-list">
  <#list entries as entry>
  <li><a class="link-list__link" href="${entry.link.href}">${entry.link.text}</a><#if entry.about?has_content> <span class="link-list__about">${entry.about}</span></#if></li>
  </#list>
</ul>
</#macro>
