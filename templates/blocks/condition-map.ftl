<#-- Numbered marks over the sheet and the list of what they mean.
     under          the picture under the marks: caseId, id, x, y, width, height; may be empty: an outline stands for it
     title          of the drawing
     description    of the drawing, in words
     width, height  of the sheet, in the drawing's units
     marks          each with number, x, y
     entries        each with number, what, where, how, marked
     words          fixed labels -->
<#macro conditionMap under title description width height marks entries words>
<#local files = [] box = {"x": -60, "y": -60, "width": width + 120, "height": height + 120}>
<#if under?has_content><#local files = renditions(under.caseId, under.id)></#if>
<#if files?has_content><#local box = under></#if>
<#local dot = [box.width, box.height]?max * 0.027>
<div class="condition-map">
  <#if marks?has_content>
  <figure class="condition-map__figure">
    <svg class="condition-map__drawing" role="img" aria-labelledby="condition-map-title condition-map-description" viewBox="${box.x} ${box.y} ${box.width} ${box.height}" width="${(box.width / 10)?round}" height="${(box.height / 10)?round}">
      <title id="condition-map-title">${title}</title>
      <desc id="condition-map-description">${description}</desc>
      <#if files?has_content>
      <image href="${frame.up}${files?first.path}" x="${box.x}" y="${box.y}" width="${box.width}" height="${box.height}" preserveAspectRatio="none"></image>
      <#else>
      <rect class="condition-map__sheet" x="0" y="0" width="${width}" height="${height}"></rect>
      </#if>
      <#list marks as mark>
      <g transform="translate(${mark.x} ${mark.y})">
        <circle class="condition-map__dot" r="${(dot)?round}"></circle>
        <text class="condition-map__number" text-anchor="middle" y="${(dot * 0.42)?round}" font-size="${(dot * 1.2)?round}">${mark.number}</text>
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
