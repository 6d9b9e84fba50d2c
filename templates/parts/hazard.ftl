<#-- What one solution or material can do; no block of its own, but part of several.
     hazard  anchor, name, signal, pictograms (code, name, drawing), says, does (code, text), grounds, unknown
     words   labels: grounds, does
     deep    whether precautions and grounds are told as well
     level   of the heading that names it: one below the heading it stands under -->
<#macro hazardLines hazard words deep=true level=4>
<div class="hazard">
  <h${level} class="hazard__name">${hazard.name}<#if hazard.signal?has_content> <strong class="hazard__signal">${hazard.signal}</strong></#if></h${level}>
  <#if hazard.pictograms?has_content>
  <ul class="hazard__pictograms">
    <#list hazard.pictograms as pictogram><li>${pictogram.drawing}<span>${pictogram.name}</span></li></#list>
  </ul>
  </#if>
  <#if hazard.unknown?has_content>
  <p class="hazard__unknown"><strong>${words.unknown}</strong></p>
  <ul class="hazard__says"><#list hazard.unknown as line><li>${line}</li></#list></ul>
  </#if>
  <#if hazard.says?has_content>
  <ul class="hazard__says"><#list hazard.says as line><li><b>${line.code}</b> ${line.text}</li></#list></ul>
  </#if>
  <#if deep>
  <#if hazard.does?has_content>
  <p class="hazard__does">${words.does}</p>
  <ul class="hazard__says"><#list hazard.does as line><li><b>${line.code}</b> ${line.text}</li></#list></ul>
  </#if>
  <#if hazard.grounds?has_content>
  <details class="hazard__more"><summary>${words.grounds}: ${hazard.name}</summary>
    <dl><#list hazard.grounds as ground><div><dt>${ground.name}</dt><dd>${ground.value}</dd></div></#list></dl>
  </details>
  </#if>
  </#if>
</div>
</#macro>
<#-- Cautions, the gravest first: word and shape tell the level, never colour alone.
     cautions  each with level, word, text, first
     firstWord "First:" -->
<#macro cautionLines cautions firstWord>
<#if cautions?has_content>
<ul class="cautions">
  <#list cautions as caution>
  <li class="note note--${caution.level}"><strong class="note__word">${caution.word}</strong> ${caution.text}<#if caution.first?has_content> <span class="cautions__first"><b>${firstWord}</b> ${caution.first}</span></#if></li>
  </#list>
</ul>
</#if>
</#macro>
