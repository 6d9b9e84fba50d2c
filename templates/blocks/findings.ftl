<#-- What came of a treatment, for readers outside the trade; the rest opens below.
     says  sentences
     open  what the closed part is called
     more  blocks in the closed part; may be empty -->
<#macro findings says open more>
<div class="findings">
  <#list says as line><p class="findings__line">${line}</p></#list>
  <#if more?has_content>
  <details class="findings__more"><summary>${open}</summary>
    <div class="findings__all"><@showAll more /></div>
  </details>
  </#if>
</div>
</#macro>
