<#-- Labels at true size, with a ruler to check the printer by.
     labels  size, name, strength, keeps, hazard, unclassified, care, waste
     words   fixed labels -->
<#macro labelSheet labels words>
<div class="labels">
  <div class="labels__ruler"><svg width="50mm" height="6mm" viewBox="0 0 500 60" aria-hidden="true"><path d="M2 8V52M2 30H498M498 8V52M102 18V42M202 18V42M302 18V42M402 18V42" fill="none" stroke="currentColor" stroke-width="4"/></svg><p>${words.ruler}</p></div>
  <ul class="labels__list">
    <#list labels as label>
    <li class="label label--${label.size}">
      <p class="label__name">${label.name}</p>
      <#if label.strength?has_content><p class="label__strength">${label.strength}</p></#if>
      <#local classed = label.hazard?has_content && label.hazard.says?has_content>
      <#if label.hazard?has_content && label.hazard.unknown?has_content || !classed && !label.unclassified>
      <p class="label__signal"><#if label.waste>${words["unknown-waste"]}<#else>${words.unknown}</#if></p>
      </#if>
      <#if classed>
      <div class="label__hazard">
        <#list label.hazard.pictograms as pictogram><span class="label__pictogram label__pictogram--${label.size}">${pictogram.drawing}</span></#list>
        <div>
          <#if label.hazard.signal?has_content><p class="label__signal">${label.hazard.signal}</p></#if>
          <p class="label__says"><#list label.hazard.says as line>${line.text}<#sep> </#list></p>
          <p class="label__does"><#list label.hazard.does as line>${line.text}<#sep> </#sep></#list></p>
        </div>
      </div>
      <#elseif label.unclassified>
      <p class="label__says"><#if label.care?has_content><#list label.care as why>${why}<#sep> </#sep></#list><#else>${words.none}</#if></p>
      </#if>
      <p class="label__write"><span class="label__line"><#if label.waste>${words.begun}<#else>${words.made}</#if> <span class="write"></span></span> <span class="label__line"><#if label.waste>${words.full}<#else>${words["use-by"]}<#if label.keeps?has_content> (${words.keeps} ${label.keeps})</#if></#if> <span class="write"></span></span> <span class="label__line">${words.by} <span class="write"></span></span></p>
      <p class="label__aid">${words.aid}</p>
    </li>
    </#list>
  </ul>
</div>
</#macro>
