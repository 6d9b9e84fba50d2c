<#-- Drawings of the same numbers, and the tables that hold them.
     drawings  each with id, title, description, width, height, marks (kind, tone, x, y, x2, y2, text, anchor, fill,
               value), caption
     numbers   anchor of the tables
     tables    the same numbers
     wide      whether the tables need the whole width -->
<#macro chart drawings numbers tables wide>
<#import "/parts/drawing.ftl" as part>
<div class="chart">
  <#list drawings as drawing>
  <@part.drawing drawing "chart__figure" numbers />
  </#list>
  <div class="chart__numbers<#if wide> chart__numbers--wide</#if>" id="${numbers}"><@showAll tables /></div>
</div>
</#macro>
