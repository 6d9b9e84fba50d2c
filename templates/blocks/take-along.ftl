<#-- Files that can be taken away, each with its size.
     files  each with href (the path of a page from the site's root, or the word of a form) and text
     note   what a file taken away does not do -->
<#macro takeAlong files note>
<ul class="take-along">
  <#list files as taken>
  <#list takenOf(taken.href) as file>
  <li><a class="take-along__file" href="${frame.up}${file.path}" download>${taken.text} (<span class="take-along__size">${file.size}</span>)</a></li>
  </#list>
  </#list>
</ul>
<p class="take-along__note">${note}</p>
</#macro>
