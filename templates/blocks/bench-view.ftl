<#-- What to do now, one action a screen, for a phone at the bench; hidden where no script shows it.
     issue    changes when the screens change
     caseId   the case that the record belongs to
     closes   when the studio closes
     stages   each with anchor, id, name, least (seconds), after (anchors)
     screens  each with anchor, name, hand, hold, action, folded, amount, see, watch, looks, clocks, cautions, care, wear,
              until, otherwise, told, drawn, notes, last, enough
     words    fixed labels -->
<#macro benchView issue caseId closes stages screens words>
<section class="bench" id="bench" data-issue="${issue}" data-case="${caseId}" data-closes="${closes}" aria-labelledby="bench-heading" hidden>
  <div class="bench__top">
    <h2 class="bench__heading" id="bench-heading">${words.heading}</h2>
    <button class="button" type="button" data-bench="steps">${words.steps}</button>
    <ol class="bench__due" aria-label="${words.due}"></ol>
    <button class="button" type="button" data-bench="sheet">${words.sheet}</button>
  </div>
  <div class="bench__screens" tabindex="-1">
    <div class="screen" data-screen="day">
      <h3 class="screen__name">${words.day}</h3>
      <p class="screen__start"><label>${words.started} <input type="time" data-bench="started"></label>
        <button class="button" type="button" data-bench="now">${words.now}</button>
        <button class="button" type="button" data-bench="sound" aria-pressed="true"></button></p>
      <ol class="screen__stages">
        <#list stages as stage>
        <li data-stage="${stage.anchor}" data-step="${stage.id}" data-least="${stage.least?c}" data-after="${stage.after?join(" ")}"<#if stage.waits gt 0> data-wait="${stage.waits?c}"</#if>><button class="button" type="button"><span>${stage.name}</span> <span class="screen__when"></span></button></li>
        </#list>
        <li><button class="button" type="button" data-bench="record">${words.record}</button></li>
      </ol>
      <p class="screen__small">${words["day-note"]}</p>
    </div>
    <#list screens as screen>
    <div class="screen<#if screen.hold?has_content> screen--hold</#if>" data-screen="${screen.anchor}"<#if screen.last> data-last</#if><#if screen.enough> data-enough</#if><#if screen.hold?has_content && screen.hold.most gt 0> data-most="${screen.hold.most?c}"</#if> hidden>
      <h3 class="screen__name">${screen.name}<#if screen.hand?has_content> <span class="screen__hand">${screen.hand}</span></#if></h3>
      <#if screen.hold?has_content>
      <p class="screen__do">${screen.hold.stop}</p>
      <#if screen.hold.atMost?has_content><p>${screen.hold.atMost} <b class="screen__latest"></b></p></#if>
      <#if screen.hold.look?has_content><p>${words.look}: ${screen.hold.look}.</p></#if>
      <p class="screen__release" data-role="${screen.hold.who}"><label>${words.initials}: ${screen.hold.who} <input type="text" maxlength="6" autocomplete="off" autocapitalize="characters"></label>
        <button class="button" type="button">${words.release}</button></p>
      <p class="screen__told" role="status"></p>
      <#if screen.hold.meanwhile?has_content><details><summary>${words.meanwhile}</summary><p>${screen.hold.meanwhile}.</p></details></#if>
      <#else>
      <#-- What a bath, a change of blotters, a drop or a weight asked for is done once its clock runs; other actions can be opened then. -->
      <#assign past = screen.clocks?filter(clock -> ["BATH", "CHANGE"]?seq_contains(clock.kind?string))?has_content?then(" screen__past", "")>
      <#assign done = (screen.folded || past != "" || screen.clocks?filter(clock -> ["DROP", "WEIGHT"]?seq_contains(clock.kind?string))?has_content)?then(" screen__past", "")>
      <#if screen.action?has_content><p class="screen__do${done}">${screen.action}</p></#if>
      <#if screen.amount?has_content><p class="screen__amount${past}"><span>${screen.amount.name}</span> <b>${screen.amount.value}</b></p></#if>
      <#if screen.see?has_content><p class="screen__see<#if !screen.action?has_content> screen__do</#if>"><b>${screen.see.name}</b> ${screen.see.value}</p></#if>
      <#list screen.watch as watched><p class="screen__see<#if screen.action?has_content> screen__watch</#if>"><b>${watched.name}</b> ${watched.value}</p></#list>
      <#list screen.looks as look><p class="screen__see screen__watch" data-at="${look.at?c}"><b>${look.what.name}</b> ${look.what.value}</p></#list>
      <#if screen.until?has_content><p class="screen__see"><b>${screen.until.name}</b> ${screen.until.value}</p></#if>
      <#list screen.clocks as clock>
      <div class="screen__time" data-face="${clock.timer}"><#if clock.label?has_content><b<#if clock.kind?string == "WHOLE"> class="screen__past"</#if>>${clock.label}</b></#if></div>
      <#else>
      <div class="screen__time"></div>
      </#list>
      <#if screen.cautions?has_content || screen.wear?has_content>
      <details class="screen__care"><summary>${screen.care}</summary></details>
      <#else>
      <p class="screen__see">${screen.care}</p>
      </#if>
      <#if screen.folded><details class="screen__watch"><summary>${words.do}</summary><p>${screen.action}</p></details></#if>
      <#if screen.otherwise?has_content><details class="screen__watch"><summary>${screen.otherwise.name}</summary><p>${screen.otherwise.value}</p></details></#if>
      <#if screen.drawn>
      <details class="screen__drawings"><summary>${words.drawings}</summary></details>
      </#if>
      <#if screen.told?has_content>
      <details class="screen__more"><summary>${words.more}</summary>
        <dl class="strip__told"><#list screen.told as fact><div><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
      </details>
      </#if>
      <#if screen.notes?has_content || screen.last>
      <details class="screen__write"><summary>${words.write}</summary>
        <#if screen.notes?has_content><ul hidden><#list screen.notes as note><li data-part="${note.part}" data-bath="${note.bath?c}" data-key="${note.key}"<#if note.of?has_content> data-of="${note.of}"</#if><#if note.before?has_content> data-before="${note.before}"</#if><#if note.unit?has_content> data-unit="${note.unit}"</#if><#if note.range?has_content> data-low="${note.range.low?c}" data-high="${note.range.high?c}" data-range="${note.range.text}"</#if><#if note.sight?has_content><#if note.sight.there?has_content> data-there="${note.sight.there}"</#if> data-until="${note.sight.until}"</#if>>${note.label}</li></#list></ul></#if>
      </details>
      </#if>
      </#if>
    </div>
    </#list>
    <div class="screen" data-screen="record" hidden>
      <h3 class="screen__name">${words.record}</h3>
      <p class="screen__small">${words["record-lead"]}</p>
      <div role="region" tabindex="0" aria-label="${words.record}"><pre class="screen__record"></pre></div>
      <p class="screen__buttons"><button class="button" type="button" data-bench="copy">${words.copy}</button>
        <button class="button" type="button" data-bench="save">${words.save}</button>
        <button class="button" type="button" data-bench="print">${words.print}</button></p>
      <p class="screen__told" role="status"></p>
    </div>
  </div>
  <p class="bench__said" role="status"></p>
  <div class="bench__ways">
    <button class="button" type="button" data-bench="back"></button>
    <button class="button" type="button" data-bench="next"></button>
  </div>
</section>
</#macro>
