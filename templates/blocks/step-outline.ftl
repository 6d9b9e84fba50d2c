<#-- What was done.
     steps  each with kind, instruction, takes (may be empty), more (a link; may be empty)
     numbered  whether they followed one another in this order -->
<#macro stepOutline steps numbered>
<#local list = numbered?then("ol", "ul")>
<${list} class="step-outline">
  <#list steps as step>
  <li class="step-outline__step">
    <p class="step-outline__kind"><#local named = numbered?then(step?counter + ". ", "") + step.kind><#if step.more?has_content><a href="${step.more.href}">${named}</a><#else>${named}</#if></p>
    <p class="step-outline__instruction">${step.instruction}</p>
    <#if step.takes?has_content><p class="step-outline__takes"><bdi>${step.takes}</bdi></p></#if>
  </li>
  </#list>
</${list}>
</#macro>
