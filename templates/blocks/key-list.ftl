<#-- The keys of a file.
     entries  each with path, needed, about, allowed (each with word, means), open (whether others may be written), explained (whether one has a meaning), example (may be empty)
     words    fixed labels -->
<#macro keyList entries words>
<dl class="key-list">
  <#list entries as entry>
  <div class="key-list__entry">
    <dt><code>${entry.path}</code><#if entry.needed> <span class="key-list__needed">${words.needed}</span></#if></dt>
    <dd>
      <p>${entry.about}</p>
      <#if entry.explained()>
      <p class="key-list__small">${entry.open?then(words.known, words.allowed)}</p>
      <ul class="key-list__words">
        <#list entry.allowed as one><li><code>${one.word}</code><#if one.means?has_content>: ${one.means}</#if></li></#list>
      </ul>
      <#elseif entry.allowed?has_content>
      <p class="key-list__small">${words.allowed} <#list entry.allowed as one><code>${one.word}</code><#sep>, </#list></p>
      </#if>
      <#if entry.example?has_content><p class="key-list__small">${words.example} <code>${entry.example}</code></p></#if>
    </dd>
  </div>
  </#list>
</dl>
</#macro>
