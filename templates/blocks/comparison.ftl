<#-- The same view before and after: two pictures, which a script lays one over the other.
     before, after  the pictures
     changed        a sentence on the pair
     words          fixed labels; those with [n] are for the script -->
<#macro comparison before after changed words>
<div class="comparison" data-compare data-before="${words.before}" data-half="${words.half}" data-after="${words.after}" data-slider="${words.slider}" data-value="${words.value}" data-buttons="${words.buttons}">
  <div class="comparison__pair">
    <@show before />
    <@show after />
  </div>
  <p class="comparison__changed">${changed}</p>
</div>
</#macro>
