<#-- Pages that can be taken away, each as one file with its size.
     pages  each with href (the path of the page from the site's root) and text
     note   what a file taken away does not do -->
<#macro takeAlong pages note>
<ul class="take-along">
  <#list pages as page>
  <#list wholeOf(page.href) as file>
  <li><a class="take-along__file" href="${frame.up}${file.path}" download>${page.text}, <span class="take-along__size">${file.size}</span></a></li>
  </#list>
  </#list>
</ul>
<p class="take-along__note">${note}</p>
</#macro>
