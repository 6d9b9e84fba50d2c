<#-- Terms and what they mean.
     letters  links to the first term of each letter
     entries  each with id, term, also, plain, more, see (links), source (a citation), drawing (may be empty)
     words    fixed labels -->
<#macro glossary letters entries words>
<#import "/parts/drawing.ftl" as part>
<nav class="contents" aria-label="${words.letters}">
  <ul>
    <#list letters as link><li><a href="${link.href}">${link.text}</a></li></#list>
  </ul>
</nav>
<dl class="glossary">
  <#list entries as entry>
  <div class="glossary__entry" id="${entry.id}">
    <dt><dfn>${entry.term}</dfn></dt>
    <dd>
      <p>${entry.plain}</p>
      <#if entry.drawing?has_content><@part.drawings [entry.drawing] /></#if>
      <#if entry.more?has_content><p class="glossary__more">${entry.more}</p></#if>
      <#if entry.also?has_content><p class="glossary__small">${words.also} ${entry.also}</p></#if>
      <#if entry.see?has_content><p class="glossary__small">${words.see} <#list entry.see as link><a href="${link.href}">${link.text}</a><#sep>, </#list></p></#if>
      <#if entry.source?has_content><p class="glossary__small">${words.source} <a href="${entry.source.href}">${entry.source.told()}</a></p></#if>
    </dd>
  </div>
  </#list>
</dl>
</#macro>
