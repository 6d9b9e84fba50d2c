<#-- A worked-out number that opens in place to its working.
     figure      the id of the figure, by which a script tells it anew
     anchor      where links to the working arrive: inside, so that browsers open it for them
     label       what the number is
     amount      the number, rounded: number, unit
     method      name of the calculation
     methodHref  its own page; may be empty
     formula     MathML; may be empty
     formulaText the formula as plain text; may be empty
     formulaAt   the working of this page that tells the formula, where this one does not: text, href
     given       what was put in: label, text, from, href
     full        the result with more digits; may be empty
     spread      how far it may lie off
     sources     citations: told(), href
     caveats     what it must not be taken for
     said        what the publication from which the case is told says to it; may be empty
     reworkable  whether the page of sums can work it again with other values; a script then links to it
     words       fixed labels -->
<#macro working figure anchor label amount method methodHref formula formulaText formulaAt given full spread sources caveats said reworkable words>
<details class="working" data-figure="${figure}">
  <summary class="working__summary"><span class="working__label">${label}</span> <bdi class="working__number"><span class="working__digits">${amount.number}</span><#if amount.unit?has_content> <span class="working__unit">${amount.unit}</span></#if></bdi></summary>
  <div class="working__body" id="${anchor}">
    <p class="working__title<#if reworkable> working__title--sum</#if>">${words.title}: <#if methodHref?has_content><a href="${methodHref}">${words.method}: ${method}</a><#else>${method}</#if></p>
    <#if formula?has_content>
    <div class="formula working__formula" role="region" tabindex="0" aria-label="${words.formula}: ${label}"><math display="block">${formula}</math></div>
    </#if>
    <#if formulaText?has_content><p class="working__plain"><code>${formulaText}</code></p></#if>
    <#if formulaAt?has_content><p>${words["formula-at"]} <a href="${formulaAt.href}">${formulaAt.text}</a></p></#if>
    <#if given?has_content>
    <div class="scroll" role="region" tabindex="0" aria-labelledby="${anchor}-in">
    <table class="working__given">
      <caption id="${anchor}-in">${words["in"]}: ${label}</caption>
      <thead><tr><th scope="col">${words.given}</th><th scope="col">${words.value}</th><th scope="col">${words.from}</th></tr></thead>
      <tbody>
        <#list given as row>
        <tr><th scope="row">${row.label}</th><td><bdi>${row.text}</bdi></td><td><#if row.href?has_content><a href="${row.href}">${row.from}</a><#else>${row.from}</#if></td></tr>
        </#list>
      </tbody>
    </table>
    </div>
    </#if>
    <dl class="working__result">
      <#if full?has_content><div><dt>${words.full}</dt><dd><bdi>${full}</bdi></dd></div></#if>
      <div><dt>${words.spread}</dt><dd>${spread}</dd></div>
      <#if caveats?has_content><div><dt>${words.caveats}</dt><dd><#list caveats as caveat>${caveat}<#sep> </#list></dd></div></#if>
      <#if sources?has_content><div><dt>${words.sources}</dt><dd><#list sources as source><a href="${source.href}">${source.told()}</a><#sep>; </#list></dd></div></#if>
      <#if said?has_content><div><dt>${words.said}</dt><dd>${said}</dd></div></#if>
    </dl>
  </div>
</details>
</#macro>
