<#-- Sources.
     numbered whether they are publications, each with its number
     entries  each with id, author, year, title, where, address (may be empty), status, citedBy (links), more (may be empty)
     words    fixed labels -->
<#macro bibliography numbered entries words>
<#if numbered><ol class="bibliography"><#else><ul class="bibliography"></#if>
  <#list entries as entry>
  <li class="bibliography__entry" id="${entry.id}">
    <p>${entry.author}<#if entry.year?has_content> (${entry.year})</#if>: <cite>${entry.title}</cite>. <span class="bibliography__where"><#if entry.address?has_content><a href="${entry.address}">${entry.where}</a><#else>${entry.where}</#if></span> <span class="bibliography__status">[${entry.status}]</span></p>
    <#if entry.citedBy?has_content><p class="bibliography__cited">${words["cited-by"]} <#list entry.citedBy as link><a href="${link.href}">${link.text}</a><#sep>, </#list><#if entry.more?has_content> ${entry.more}</#if></p></#if>
  </li>
  </#list>
<#if numbered></ol><#else></ul></#if>
</#macro>
