<#-- The drawing alone.
     drawing  as below
     numbers  anchor of the tables that hold the same numbers; empty if it has none -->
<#macro svg drawing numbers="">
<svg role="img" aria-labelledby="${drawing.id}-title ${drawing.id}-desc" viewBox="-2 0 ${drawing.width + 4} ${drawing.height}" width="${drawing.width + 4}" height="${drawing.height}"<#if numbers?has_content> data-table="${numbers}"</#if>>
  <title id="${drawing.id}-title">${drawing.title}</title>
  <desc id="${drawing.id}-desc">${drawing.description}</desc>
  <#list drawing.marks as mark>
  <#local told><#if mark.value?has_content> data-value="${mark.value}"</#if></#local>
  <#switch mark.kind>
  <#case "line"><path class="chart__line chart__line--${mark.tone}" d="M${mark.x} ${mark.y}L${mark.x2} ${mark.y2}"/><#break>
  <#case "dot"><circle class="chart__mark chart__mark--${mark.tone}" cx="${mark.x}" cy="${mark.y}" r="6"${told}/><#break>
  <#case "square"><rect class="chart__mark chart__mark--${mark.tone}" x="${mark.x - 6}" y="${mark.y - 6}" width="12" height="12"${told}/><#break>
  <#case "tick"><path class="chart__tick" d="M${mark.x - 5} ${mark.y - 3}h10l-5 9z"/><#break>
  <#case "hold"><path class="chart__hold" d="M${mark.x} ${mark.y}v20M${mark.x + 5} ${mark.y}v20"/><#break>
  <#case "bar"><rect class="chart__bar chart__bar--${mark.tone}" x="${mark.x}" y="${mark.y}" width="${mark.x2}" height="${mark.y2}"${told}/><#break>
  <#case "swatch"><rect class="chart__swatch" x="${mark.x}" y="${mark.y}" width="${mark.x2}" height="${mark.y2}" fill="${mark.fill}"${told}/><#break>
  <#case "path"><path class="chart__path chart__path--${mark.tone}" d="${mark.text}"${told}/><#break>
  <#case "text"><text class="chart__text" x="${mark.x}" y="${mark.y}" text-anchor="${mark.anchor}">${mark.text}</text><#break>
  </#switch>
  </#list>
</svg>
</#macro>
<#-- A drawing with its caption; no block of its own, but part of several.
     drawing  id, title, description, width, height, marks (kind, tone, x, y, x2, y2, text, anchor, fill, value), caption
     class    of the figure
     numbers  anchor of the tables that hold the same numbers; empty if it has none -->
<#macro drawing drawing class numbers="">
<figure class="${class}">
  <@svg drawing numbers />
  <figcaption>${drawing.caption}</figcaption>
</figure>
</#macro>
<#-- Line drawings beside each other.
     drawings  as above -->
<#macro drawings drawings>
<div class="drawing-row">
  <#list drawings as one><@drawing one "drawing-row__figure" /></#list>
</div>
</#macro>
