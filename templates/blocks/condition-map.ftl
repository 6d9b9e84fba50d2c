<#-- Numbered marks over the sheet and the list of what they mean.
     picture        the picture under the marks; may be empty: an outline stands for the sheet
     title          of the drawing
     description    of the drawing, in words
     width, height  of the sheet, in the drawing's units
     marks          each with number, x, y
     entries        each with number, what, where, how, marked
     words          fixed labels -->
<#macro conditionMap picture title description width height marks entries words>
<div class="condition-map">
  <#if marks?has_content>
  <figure class="condition-map__figure">
    <svg class="condition-map__drawing" role="img" aria-labelledby="condition-map-title condition-map-description" viewBox="-60 -60 ${width + 120} ${height + 120}" width="${width / 10}" height="${height / 10}">
      <title id="condition-map-title">${title}</title>
      <desc id="condition-map-description">${description}</desc>
      <rect class="condition-map__sheet" x="0" y="0" width="${width}" height="${height}"></rect>
      <#list marks as mark>
      <g transform="translate(${mark.x} ${mark.y})">
        <circle class="condition-map__dot" r="110"></circle>
        <text class="condition-map__number" text-anchor="middle" y="48">${mark.number}</text>
      </g>
      </#list>
    </svg>
    <figcaption>${words.caption}</figcaption>
  </figure>
  </#if>
  <ol class="condition-map__list">
    <#list entries as entry>
    <li><strong>${entry.what}</strong><#if entry.where?has_content>, ${entry.where}</#if><#if entry.how?has_content>: ${entry.how}</#if><#if !entry.marked && marks?has_content> <small>(${words["not-marked"]})</small></#if></li>
    </#list>
  </ol>
</div>
</#macro>
