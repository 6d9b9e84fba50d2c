<#-- A captioned table; the first cell heads its row.
     id       anchor
     caption  what it tells
     columns  each with header and numbers (whether it lines up at its end)
     rows     lists of cells
     data     a link to the same numbers as a file; may be empty -->
<#macro table id caption columns rows data>
<div class="table scroll" id="${id}" role="region" tabindex="0" aria-labelledby="${id}-caption">
  <table>
    <caption id="${id}-caption">${caption}</caption>
    <thead>
      <tr><#list columns as column><th scope="col"<#if column.numbers> class="table__number"</#if>>${column.header}</th></#list></tr>
    </thead>
    <tbody>
      <#list rows as row>
      <tr><#list row as cell><#if cell?is_first><th scope="row">${cell}</th><#else><td<#if columns[cell?index].numbers> class="table__number"</#if>>${cell}</td></#if></#list></tr>
      </#list>
    </tbody>
  </table>
</div>
<#if data?has_content><p class="table__data"><a href="${data.href}">${data.text}</a></p></#if>
</#macro>
