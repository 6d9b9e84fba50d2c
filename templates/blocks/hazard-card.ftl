<#-- What a substance can do, all of it open: what to do must not hide behind a click.
     hazard  anchor, name, signal, pictograms, says, does, grounds
     words   labels: does, grounds -->
<#import "/parts/hazard.ftl" as part>
<#macro hazardCard hazard words>
<div class="hazard-card" id="${hazard.anchor}">
  <@part.hazardLines hazard words false 3 />
  <#if hazard.does?has_content>
  <h4 class="hazard-card__heading">${words.does}</h4>
  <ul class="hazard__says"><#list hazard.does as line><li><b>${line.code}</b> ${line.text}</li></#list></ul>
  </#if>
  <h4 class="hazard-card__heading">${words.grounds}</h4>
  <dl class="hazard-card__grounds"><#list hazard.grounds as ground><div><dt>${ground.name}</dt> <dd>${ground.value}</dd></div></#list></dl>
</div>
</#macro>
