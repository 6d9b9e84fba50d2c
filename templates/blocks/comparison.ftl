<#-- The same view before and after: two pictures, which a script lays one over the other where their shapes are alike.
     The desk for that stands here with its room, so that nothing jumps when the script comes to it.
     before, after  the pictures
     changed        a sentence on the pair
     words          fixed labels; that with [n] is for the script -->
<#macro comparison before after changed words>
<#local one = renditions(before.caseId, before.id) other = renditions(after.caseId, after.id)>
<#local alike = false>
<#if one?has_content && other?has_content>
<#local shape = (one?last.width / one?last.height) / (other?last.width / other?last.height)>
<#local alike = shape gt 0.9 && shape lt 1.1>
</#if>
<div class="comparison"<#if alike> data-compare="${words.value}"</#if>>
  <#if alike>
  <div class="comparison__desk" hidden>
    <div class="comparison__stack" aria-hidden="true"><svg class="comparison__room" width="${one?last.width}" height="${one?last.height}" viewBox="0 0 ${one?last.width} ${one?last.height}"></svg></div>
    <label class="comparison__slider">${words.slider}<input type="range" min="0" max="100" step="5" value="50"></label>
    <div class="comparison__buttons" role="group" aria-label="${words.buttons}">
      <#list [[words.before, 0], [words.half, 50], [words.after, 100]] as choice>
      <button class="button" type="button" value="${choice[1]}" aria-pressed="false">${choice[0]}</button>
      </#list>
    </div>
  </div>
  </#if>
  <div class="comparison__pair">
    <@show before />
    <@show after />
  </div>
  <p class="comparison__changed">${changed}</p>
</div>
</#macro>
