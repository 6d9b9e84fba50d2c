<#-- One thing to prepare.
     anchor, title         which
     batch                 how much to make at a time; may be empty
     times, begin          how often, and when to begin; may be empty
     measures              amount, of, with, working
     how                   what to do, in order
     facts                 keeps, storage, used in
     cautions, wear        what must not be forgotten; what to wear while making it
     hazard                what it can do
     working               the figures behind it
     words                 fixed labels -->
<#macro recipeCard anchor title batch times begin measures how facts cautions wear hazard working words>
<#import "/parts/hazard.ftl" as part>
<article class="recipe" id="${anchor}" aria-labelledby="${anchor}-name">
  <h3 class="recipe__name" id="${anchor}-name">${title}</h3>
  <#if begin?has_content><p class="recipe__begin">${begin}</p></#if>
  <#if batch?has_content><div class="recipe__batch"><@show batch /></div></#if>
  <#if times?has_content><p>${times}</p></#if>
  <@part.cautionLines cautions words.first />
  <#if wear?has_content>
  <p class="recipe__wear"><b>${words.wear}:</b> <#list wear as line>${line}<#sep> </#list></p>
  </#if>
  <#if measures?has_content>
  <div class="scroll" role="region" tabindex="0" aria-labelledby="${anchor}-measures">
  <table class="recipe__measures">
    <caption id="${anchor}-measures">${words.measure}: ${title}</caption>
    <thead><tr><th scope="col">${words.of}</th><th scope="col">${words.amount}</th><th scope="col">${words.with}</th></tr></thead>
    <tbody>
      <#list measures as row>
      <tr><th scope="row">${row.of}</th><td class="recipe__amount"><bdi>${row.amount}</bdi></td><td>${row.with}<#if row.working?has_content> <a class="number" href="${row.working.href}">${row.working.text}</a></#if></td></tr>
      </#list>
    </tbody>
  </table>
  </div>
  </#if>
  <#if how?has_content>
  <ol class="recipe__how" aria-label="${words.how}: ${title}"><#list how as line><li>${line}</li></#list></ol>
  </#if>
  <#if hazard?has_content>
  <@part.hazardLines hazard words />
  </#if>
  <#if facts?has_content>
  <dl class="facts"><#list facts as fact><div class="facts__row"><dt>${fact.name}</dt><dd>${fact.value}</dd></div></#list></dl>
  </#if>
  <p class="recipe__write">${words.made} <span class="write"></span> ${words["use-by"]} <span class="write"></span> ${words.by} <span class="write"></span></p>
  <#if working?has_content>
  <details class="strip__behind"><summary>${words.behind}: ${title}</summary>
    <#list working as figure><@show figure /></#list>
  </details>
  </#if>
</article>
</#macro>
