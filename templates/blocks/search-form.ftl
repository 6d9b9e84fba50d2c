<#-- The search and the ways to go without it.
     up       the way to the site's root
     index    the name of the script with the first part of the index
     words    fixed labels; those with [q] and [n], and the words that stand in any question, are for the script
     instead  the index pages -->
<#macro searchForm up index words instead>
<form class="search-form" role="search" action="search.html" method="get" data-search data-up="${up}" data-index="${index}" data-found="${words.found}" data-found-one="${words["found-one"]}" data-nothing="${words.nothing}" data-common="${words.common}" data-owner="${words.owner}" data-real="${words.real}" data-invented="${words.invented}">
  <label class="search-form__label" for="search-words">${words.label}</label>
  <div class="search-form__row">
    <input class="search-form__words" id="search-words" name="q" type="search" autocomplete="off" spellcheck="false">
    <button class="button" type="submit">${words.button}</button>
  </div>
</form>
<p class="search-form__status" role="status" data-search-status></p>
<ol class="search-form__results" aria-label="${words.results}" data-search-results hidden></ol>
<div class="search-form__instead">
  <p>${words.instead}</p>
  <ul>
    <#list instead as link><li><a href="${link.href}">${link.text}</a></li></#list>
  </ul>
</div>
</#macro>
