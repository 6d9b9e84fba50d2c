<#-- A calculation to be worked in the page; the form shows itself where scripts run.
     calculation  the calculation's name
     title    the calculation in words
     formula  as plain text
     range    where it holds; may be empty
     method   link to formula, sources and caveats
     fields   one for each input: key, label, allowed, usual, example, choices, units, unit, required
     words    fixed labels and what the script says -->
<#macro sumForm calculation title formula range method fields words>
<div class="sum" data-sum="${calculation}" data-result="${words.result}: ${title}" data-put-in="${words["put-in"]}" data-no-value="${words["no-value"]}" data-refused="${words.refused}" data-loading="${words.loading}" data-missing="${words.missing}" data-as-sheet="${words["as-on-the-sheet"]}" data-changed="${words.changed}" data-on-sheet="${words["on-the-sheet"]}" data-own="${words.own}" data-back="${words.back}">
  <p class="sum__formula"><code>${formula}</code></p>
  <p class="sum__about"><#if range?has_content>${words.holds}: ${range?remove_ending(".")}. </#if><a href="${method.href}" aria-label="${method.text}: ${title}">${method.text}</a></p>
  <form class="sum__form" novalidate hidden>
    <#list fields as field>
    <#assign id = "sum-" + calculation + "-" + field.key>
    <div class="sum__field">
      <label for="${id}">${field.label}</label>
      <div class="sum__entry">
      <#if field.choices?has_content>
        <select id="${id}" name="${field.key}" aria-describedby="${id}-range"><#if !field.required><option value="">......</option></#if><#list field.choices as choice, shown><option value="${choice}">${shown}</option></#list></select>
      <#else>
        <input id="${id}" name="${field.key}" type="text" dir="ltr" autocomplete="off" spellcheck="false" aria-describedby="${id}-range">
        <#if field.units?has_content>
        <select data-unit="${field.key}" aria-label="${words.unit}: ${field.label}"><#list field.units as unit><option<#if unit == field.unit> selected</#if>>${unit}</option></#list></select>
        </#if>
      </#if>
      </div>
      <p class="sum__was" data-was="${field.key}"></p>
      <p class="sum__range" id="${id}-range"><#if !field.choices?has_content>${field.allowed}; ${words["such-as"]} ${field.example}</#if><#if field.usual?has_content>. ${words["if-not-given"]}: ${field.usual}</#if></p>
    </div>
    </#list>
    <button class="button" type="submit" aria-label="${words["work-out"]}: ${title}">${words["work-out"]}</button>
  </form>
  <div class="sum__answer" role="status"></div>
</div>
</#macro>
