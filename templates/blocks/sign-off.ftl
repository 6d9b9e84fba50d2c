<#-- Places to sign for each hold point.
     caption  what is signed for
     rows     step (link), before, look, who
     words    fixed labels -->
<#macro signOff caption rows words>
<div class="table scroll" id="sign-off" role="region" tabindex="0" aria-labelledby="sign-off-caption">
  <table class="sign-off">
    <caption id="sign-off-caption">${caption}</caption>
    <thead><tr><th scope="col">${words.step}</th><th scope="col">${words.before}</th><th scope="col">${words.look}</th><th scope="col">${words.who}</th><th scope="col">${words.sign}</th></tr></thead>
    <tbody>
      <#list rows as row>
      <tr><th scope="row"><a href="${row.step.href}">${row.step.text}</a></th><td>${row.before}</td><td><#if row.look?has_content>${row.look}<#else>${words["look-all"]}</#if></td><td>${row.who}</td><td><span class="write">${words["sign-here"]}</span></td></tr>
      </#list>
    </tbody>
  </table>
</div>
</#macro>
