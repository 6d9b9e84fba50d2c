<#-- Published sources by number.
     entries  each with id, author, year, title, where, status, citedBy (links), more (may be empty)
     words    fixed labels -->
<#macro bibliography entries words>
<ol class="bibliography">
  <#list entries as entry>
  <li class="bibliography__entry" id="${entry.id}">
    <p>${entry.author}<#if entry.year?has_content> (${entry.year})</#if>: <cite>${entry.title}</cite>. <span class="bibliography__where">${entry.where}</span> <span class="bibliography__status">[${entry.status}]</span></p>
    <#if entry.citedBy?has_content><p class="bibliography__cited">${words["cited-by"]} <#list entry.citedBy as link><a href="${link.href}">${link.text}</a><#sep>, </#list><#if entry.more?has_content> ${entry.more}</#if></p></#if>
  </li>
  </#list>
</ol>
</#macro>
