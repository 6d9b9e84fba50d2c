<#-- The form in which one station of a class writes down its day; complete on paper, kept on the device where scripts run.
     caseId    the case that the class works through
     sheet     which issue of the step sheet
     course    id of the class
     issue     number of the issue; empty if it has none
     stations  each with number and codes (list)
     steps     each with id, name, hold (before, who, look; may be empty), notes (by bath), outcomes (one for each place)
     levels    how much help was needed, from the most to the least
     words     fixed labels -->
<#macro recordForm caseId sheet course issue stations steps levels words>
<section class="record" id="record" data-case="${caseId}" data-sheet="${sheet}" data-class="${course}" data-issue="${issue}" aria-labelledby="record-heading">
  <h2 class="record__heading" id="record-heading">${words.heading} <span class="record__station"></span></h2>
  <div class="record__desk" hidden>
    <p>${words.choose}</p>
    <ul class="record__stations">
      <#list stations as one><li id="station-${one.number?c}" data-codes="${one.codes?join("|")}"><button class="button" type="button" aria-pressed="false" data-station="${one.number?c}">${one.name}</button></li></#list>
    </ul>
    <p class="record__buttons"><button class="button" type="button" data-record="save">${words.save}</button>
      <button class="button" type="button" data-record="print">${words.print}</button></p>
    <p><label class="record__field"><span>${words.open}</span><input type="file" accept=".json,application/json" data-record="open"></label></p>
    <p class="record__told" role="status"></p>
    <p class="record__ask"></p>
  </div>
  <div class="record__fields">
    <@box words.station "" "station" 1 />
    <@box words.trainees "" "trainees" 1 />
  </div>
  <#list steps as step>
  <div class="record__step" id="record-step-${step.id}">
    <h3>${step.name}</h3>
    <#if step.hold?has_content>
    <p class="record__hold">${words.hold}: ${step.hold.before}.<#if step.hold.look?has_content> ${words.look}: ${step.hold.look}.</#if></p>
    <div class="record__fields" data-role="${step.hold.who}">
      <@box words["released-by"] step.name step.id + "/released/0/by" 1 />
      <@moment words["released-at"] step.name step.id + "/released/0/at" />
    </div>
    </#if>
    <div class="record__fields">
      <@box words["done-by"] step.name step.id + "//0/done by" 1 />
      <@moment words.began step.name step.id + "//0/began" />
      <@moment words.ended step.name step.id + "//0/ended" />
    </div>
    <#list step.notes as group>
    <p class="record__group">${group.name}</p>
    <div class="record__fields">
      <#list group.notes as note>
      <#if ["laid in", "lifted out", "read at", "changed at"]?seq_contains(note.key)>
      <@moment note.label group.name + ", " + step.name step.id + "/" + note.part + "/" + note.bath?c + "/" + note.key />
      <#elseif note.key == "additions">
      <@box note.label group.name + ", " + step.name step.id + "/" + note.part + "/" + note.bath?c + "/" + note.key 2 />
      <#else>
      <label class="record__field"><span>${note.label}<#if note.unit?has_content>, ${note.unit}</#if></span><input type="text" name="${step.id}/${note.part}/${note.bath?c}/${note.key}" data-before="${note.before}" data-unit="${note.unit}" autocomplete="off"<#if note.unit?has_content || note.before?has_content> inputmode="decimal"</#if> aria-label="${note.label}<#if note.unit?has_content>, ${note.unit}</#if>: ${group.name}, ${step.name}"></label>
      </#if>
      </#list>
    </div>
    </#list>
    <div class="record__fields">
      <@pick label=words.seen of=step.name name=(step.id + "//0/seen") options=[["as expected", words["seen-yes"]], ["not as expected", words["seen-no"]]] />
      <@box words.because step.name step.id + "//0/because" 1 />
      <@box words.noticed step.name step.id + "//0/noticed" 3 />
      <@box words.deviation step.name step.id + "//0/deviation" 2 />
      <@box words.initials step.name step.id + "//0/initials" 1 />
    </div>
    <#list step.outcomes as one>
    <div class="record__mark" data-will="${one.will}" data-step="${step.id}">
      <p class="record__group">${one.told}</p>
      <p class="record__criterion">${words["met-when"]}: ${one.metWhen}<#if one.notYet?has_content>. ${words["not-yet-when"]}: ${one.notYet}</#if></p>
      <div class="record__fields">
        <#assign mark = one.will + ", " + (one.place?c)>
        <label class="record__field"><span>${words.trainee}</span><input type="text" name="mark/${one.number?c}/${one.place?c}/trainee" data-place="${one.place?c}" autocomplete="off" aria-label="${words.trainee}: ${mark}"></label>
        <@pick label=words.met of=mark name=("mark/" + one.number?c + "/" + one.place?c + "/met") options=[["met", words["met-yes"]], ["not yet", words["met-no"]]] />
        <@level words["help-today"] mark "mark/" + one.number?c + "/" + one.place?c + "/help today" levels />
        <@level words["help-next"] mark "mark/" + one.number?c + "/" + one.place?c + "/help next time" levels />
        <@box words.assessor mark "mark/" + one.number?c + "/" + one.place?c + "/assessor" 1 />
        <@box words.remark mark "mark/" + one.number?c + "/" + one.place?c + "/remark" 2 />
      </div>
    </div>
    </#list>
  </div>
  </#list>
</section>
</#macro>
<#macro box label of name rows>
<label class="record__field<#if rows gt 1> record__field--wide</#if>"><span>${label}</span><#if rows gt 1><textarea name="${name}" rows="${rows?c}" aria-label="${label}: ${of}"></textarea><#else><input type="text" name="${name}" autocomplete="off" aria-label="${label}<#if of?has_content>: ${of}</#if>"></#if></label>
</#macro>
<#macro moment label of name>
<div class="record__field record__field--blank"><label><span>${label}</span><input type="datetime-local" name="${name}" aria-label="${label}: ${of}"></label></div>
</#macro>
<#macro pick label of name options>
<label class="record__field record__field--blank"><span>${label}</span><select name="${name}" aria-label="${label}: ${of}"><option value="">......</option><#list options as option><option value="${option[0]}">${option[1]}</option></#list></select></label>
</#macro>
<#macro level label of name levels>
<label class="record__field record__field--blank"><span>${label}</span><select name="${name}" data-number="yes" aria-label="${label}: ${of}"><option value="">......</option><#list levels as one><option value="${(one?index + 1)?c}">${(one?index + 1)?c} ${one}</option></#list></select></label>
</#macro>
