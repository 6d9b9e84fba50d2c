<#-- A chart drawn from marks, and the table that holds the same numbers.
     id, title, description  names and words of the drawing
     width, height           of the drawing
     marks                   kind, tone, x, y, x2, y2, text, anchor, fill, value
     caption                 what to look for
     table                   the same numbers -->
<#macro chart id title description width height marks caption table>
<figure class="chart">
  <div class="chart__wrap" role="region" tabindex="0" aria-labelledby="${id}-title">
  <svg role="img" aria-labelledby="${id}-title ${id}-desc" viewBox="-2 0 ${width + 4} ${height}" width="${width + 4}" height="${height}" data-table="${table.id}">
    <title id="${id}-title">${title}</title>
    <desc id="${id}-desc">${description}</desc>
    <#list marks as mark>
    <#local told><#if mark.value?has_content> data-value="${mark.value}"</#if></#local>
    <#switch mark.kind>
    <#case "line"><path class="chart__line chart__line--${mark.tone}" d="M${mark.x} ${mark.y}L${mark.x2} ${mark.y2}"/><#break>
    <#case "dot"><circle class="chart__mark chart__mark--${mark.tone}" cx="${mark.x}" cy="${mark.y}" r="6"${told}/><#break>
    <#case "square"><rect class="chart__mark chart__mark--${mark.tone}" x="${mark.x - 6}" y="${mark.y - 6}" width="12" height="12"${told}/><#break>
    <#case "tick"><path class="chart__tick" d="M${mark.x - 5} ${mark.y - 3}h10l-5 9z"/><#break>
    <#case "hold"><path class="chart__hold" d="M${mark.x} ${mark.y}v20M${mark.x + 5} ${mark.y}v20"/><#break>
    <#case "bar"><rect class="chart__bar chart__bar--${mark.tone}" x="${mark.x}" y="${mark.y}" width="${mark.x2}" height="${mark.y2}"${told}/><#break>
    <#case "swatch"><rect class="chart__swatch" x="${mark.x}" y="${mark.y}" width="${mark.x2}" height="${mark.y2}" fill="${mark.fill}"/><#break>
    <#case "text"><text class="chart__text" x="${mark.x}" y="${mark.y}" text-anchor="${mark.anchor}">${mark.text}</text><#break>
    </#switch>
    </#list>
  </svg>
  </div>
  <figcaption>${caption}</figcaption>
</figure>
<@show table />
</#macro>
