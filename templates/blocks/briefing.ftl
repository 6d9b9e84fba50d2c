<#-- What everybody must know before the first step.
     id, heading, lead  its head
     dangers, cautions  what can happen, the gravest and the rest
     wear               what to wear and at which steps
     hazards            what the liquids and powders can do
     aid, waste         what to do if it happens; what is left over
     read               the box to tick; may be left out
     defer              what stands above this sheet
     words              fixed labels -->
<#macro briefing id heading lead dangers cautions wear hazards aid waste defer read words>
<#import "/parts/hazard.ftl" as part>
<section class="section briefing" id="${id}" aria-labelledby="${id}-heading">
  <h2 class="section__heading" id="${id}-heading">${heading}</h2>
  <div class="section__body">
    <p class="section__lead">${lead}</p>
    <#if dangers?has_content>
    <h3>${words.dangers}</h3>
    <@part.cautionLines dangers words.first />
    <#elseif !cautions?has_content>
    <p>${words.nothing}</p>
    </#if>
    <#if wear?has_content>
    <h3>${words.wear}</h3>
    <dl class="facts"><#list wear as fact><div class="facts__row"><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
    </#if>
    <#if cautions?has_content>
    <details class="briefing__part"><summary>${words.cautions}</summary>
    <@part.cautionLines cautions words.first />
    </details>
    </#if>
    <#if hazards?has_content>
    <details class="briefing__part"><summary>${words.hazards}</summary>
    <div class="briefing__hazards"><#list hazards as hazard><@part.hazardLines hazard words /></#list></div>
    </details>
    </#if>
    <#if aid?has_content>
    <details class="briefing__part"><summary>${words.aid}</summary>
    <dl class="facts"><#list aid as fact><div class="facts__row"><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
    </details>
    </#if>
    <#if waste?has_content>
    <details class="briefing__part"><summary>${words.waste}</summary>
    <dl class="facts"><#list waste as fact><div class="facts__row"><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
    </details>
    </#if>
    <p class="briefing__defer">${defer}</p>
    <#if read?has_content><label class="tick"><input type="checkbox" id="${read.id}"> <span>${read.text}</span></label></#if>
  </div>
</section>
</#macro>
