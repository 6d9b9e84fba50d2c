<#-- Choices that hide rows of the evidence on a page; shown only where scripts run.
     choices  each with id, label, values (key, label)
     words    fixed labels; that with [n] and [m] is for the script -->
<#macro evidenceFilter choices words>
<form class="evidence-filter" data-evidence-filter data-shown="${words.shown}" aria-label="${words.label}">
  <#list choices as choice>
  <label class="evidence-filter__choice" for="${choice.id}">${choice.label}
    <select id="${choice.id}" autocomplete="off">
      <option value="">${words.all}</option>
      <#list choice.values as value>
      <option value="${value.key}">${value.label}</option>
      </#list>
    </select>
  </label>
  </#list>
  <p class="evidence-filter__status" role="status" data-evidence-status></p>
</form>
</#macro>
