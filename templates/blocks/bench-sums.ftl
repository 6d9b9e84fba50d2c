<#-- What was changed at the bench, and the way back; a script fills and shows it.
     figures  the file of the case's figures
     words    fixed labels, which the script reads from the list -->
<#macro benchSums figures words>
<section class="bench-sums" data-figures="${figures}" aria-labelledby="bench-sums-heading" hidden>
  <h2 class="bench-sums__heading" id="bench-sums-heading">${words.heading}</h2>
  <p>${words.lead}</p>
  <ul class="bench-sums__changes"></ul>
  <button class="button" type="button" data-sums="own">${words.own}</button>
  <p class="bench-sums__status" role="status"></p>
  <ul class="bench-sums__words" hidden>
    <#list words as key, text><li data-word="${key}">${text}</li></#list>
  </ul>
</section>
</#macro>
