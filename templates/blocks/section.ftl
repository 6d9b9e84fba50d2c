<#-- A part of a page under a heading of the second level.
     id       anchor
     heading  the heading
     lead     one line below it; may be empty
     blocks   what stands in it -->
<#macro section id heading lead blocks>
<section class="section" id="${id}" aria-labelledby="${id}-heading">
  <h2 class="section__heading" id="${id}-heading">${heading}</h2>
  <div class="section__body">
    <#if lead?has_content><p class="section__lead">${lead}</p></#if>
    <@showAll blocks />
  </div>
</section>
</#macro>
