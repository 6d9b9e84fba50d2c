<#-- Comfort where scripts run; hidden without them.
     store  under which name this device keeps ticks and timers
     words  fixed labels, which the script reads from the list -->
<#macro benchDesk store words>
<section class="bench-desk" id="desk" data-store="${store}" aria-labelledby="desk-heading" hidden>
  <h2 class="bench-desk__heading" id="desk-heading">${words.heading}</h2>
  <p class="bench-desk__kept">${words.kept}</p>
  <div class="bench-desk__buttons">
    <#if words.bench??><button class="button" type="button" data-desk="bench">${words.bench}</button></#if>
    <button class="button" type="button" data-desk="awake" aria-pressed="false">${words.awake}</button>
    <button class="button" type="button" data-desk="clear">${words.clear}</button>
  </div>
  <p class="bench-desk__status" role="status"></p>
  <ul class="bench-desk__words" hidden>
    <#list words as key, text><li data-word="${key}">${text}</li></#list>
  </ul>
</section>
</#macro>
