<#-- Pictures side by side as far as the page is wide.
     photos  in order -->
<#macro photoRow photos>
<div class="photo-row">
  <@showAll photos />
</div>
</#macro>
