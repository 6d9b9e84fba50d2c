<#-- The steps as they run down the bench: the clock at the left, the action, the amount where the hand goes.
     steps  each with anchor, number, kind, clock, takes, hold, supervised, cautions, care, wear, instruction, amounts, facts, told,
            reasons, timers, checks, behind, photo, drawings, follows
     words  fixed labels -->
<#macro benchStrip steps words>
<#import "/parts/hazard.ftl" as part>
<#import "/parts/drawing.ftl" as line>
<ol class="strip">
  <#list steps as step>
  <li class="strip__step" id="${step.anchor}" data-follows="${step.follows?join(" ")}">
    <#if step.hold?has_content>
    <div class="strip__hold" role="note">
      <h3 class="strip__hold-word"><span aria-hidden="true">■</span> ${words.hold}: ${step.number}. ${step.kind}</h3>
      <p class="strip__hold-stop">${step.hold.stop}</p>
      <p>${step.hold.released}<#if step.hold.look?has_content> ${words["hold-look"]}: ${step.hold.look}.</#if></p>
      <#if step.hold.meanwhile?has_content>
      <p>${words["hold-meanwhile"]}: ${step.hold.meanwhile}.</p>
      </#if>
      <#if step.hold.atMost?has_content>
      <p>${step.hold.atMost}</p>
      </#if>
      <p class="strip__write">${words.initials} <span class="write"></span></p>
    </div>
    </#if>
    <div class="strip__clock">
      <p><span class="strip__small">${words.clock}</span> ${step.clock}</p>
      <p><span class="strip__small">${words.takes}</span> ${step.takes}</p>
    </div>
    <div class="strip__action">
      <h3 class="strip__kind">${step.number}. ${step.kind}</h3>
      <#if step.supervised?has_content><@part.cautionLines [step.supervised] words.first /></#if>
      <#if step.cautions?has_content || step.wear?has_content>
      <details class="strip__care"><summary>${step.care}</summary>
        <@part.cautionLines step.cautions words.first />
        <#if step.wear?has_content>
        <p class="strip__wear"><b>${words.wear}:</b> <#list step.wear as line>${line}<#sep> </#list></p>
        </#if>
      </details>
      <#else>
      <p>${step.care}</p>
      </#if>
      <p class="strip__do">${step.instruction}</p>
    </div>
    <div class="strip__amounts">
      <#if step.amounts?has_content>
      <p class="strip__small">${words.amounts}</p>
      </#if>
      <#list step.amounts as amount><@show amount /></#list>
      <#if step.facts?has_content>
      <dl class="strip__facts"><#list step.facts as fact><div><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
      </#if>
      <#if step.behind?has_content>
      <details class="strip__behind"><summary>${words.behind}</summary>
        <#list step.behind as figure><@show figure /></#list>
      </details>
      </#if>
    </div>
    <div class="strip__rest">
      <#if step.told?has_content>
      <dl class="strip__told"><#list step.told as fact><div><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
      </#if>
      <#if step.reasons?has_content>
      <div class="strip__why"><p><b>${words.why}</b></p><ul><#list step.reasons as reason><li>${reason}</li></#list></ul></div>
      </#if>
      <#if step.timers?has_content>
      <p class="strip__small">${words.timers}</p>
      <ul class="timers" aria-label="${words.timers}">
        <#list step.timers as timer>
        <li class="timer" data-timer="${timer.id}" data-seconds="${timer.seconds?c}"<#if timer.then?has_content> data-then="${timer.then}"</#if> data-kind="${timer.kind?lower_case}"<#if timer.due gt 0> data-due="${timer.due?c}"</#if>>
          <p class="timer__plain"><span class="timer__label">${timer.label}</span> <#if timer.iso?has_content><time class="timer__length" datetime="${timer.iso}">${timer.length}</time><#else><span class="timer__length">${timer.length}</span></#if><#if timer.at?has_content> <span class="timer__at">${timer.at}</span></#if></p>
          <p class="timer__write">${words.started} <span class="write"></span> ${words.ended} <span class="write"></span></p>
        </li>
        </#list>
      </ul>
      </#if>
      <fieldset class="ticks">
        <legend>${words.tick}: ${step.number}. ${step.kind}</legend>
        <#list step.checks as check>
        <label class="tick"><input type="checkbox" id="tick-${step.anchor}-${check?index}"> <span>${check}</span></label>
        </#list>
      </fieldset>
      <#if step.photo?has_content><@show step.photo /></#if>
      <#if step.drawings?has_content><@line.drawings step.drawings /></#if>
    </div>
  </li>
  </#list>
</ol>
</#macro>
