<#-- What of the site is kept on the device; hidden until the script has something to say.
     words  what the script says, with [n], [all], [day] and [cases] to be filled -->
<#macro keptOffline words>
<div class="kept-offline" data-kept hidden>
  <p class="kept-offline__state" data-kept-state role="status"></p>
  <p class="kept-offline__news" data-kept-news role="status" hidden></p>
  <ul hidden>
    <#list words as key, text><li data-word="${key}">${text}</li></#list>
  </ul>
</div>
</#macro>
