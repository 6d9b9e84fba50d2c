<#-- Groups of links under headings of the third level.
     groups  each with id, heading (may be empty), entries (link, beside) -->
<#macro linkGroups groups>
<div class="link-groups">
  <#list groups as group>
  <div class="link-groups__group">
    <#if group.heading?has_content><h3 class="link-groups__heading" id="${group.id}">${group.heading}</h3></#if>
    <ul>
      <#list group.entries as entry>
      <li><a href="${entry.link.href}">${entry.link.text}</a> <span class="link-groups__beside">${entry.beside}</span></li>
      </#list>
    </ul>
  </div>
  </#list>
</div>
</#macro>
