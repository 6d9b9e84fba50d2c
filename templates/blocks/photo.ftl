<#-- A picture with its caption.
     caseId, id  which picture; the publisher knows its files
     alt         what is seen and why it matters
     caption     what to look for; may be empty
     light       how it was lit; may be empty
     credit      who made it, licence; may be empty
     tag         such as "Before"; may be empty
     first       whether it stands in the first view -->
<#macro photo caseId id alt caption light credit tag first>
<#local files = renditions(caseId, id)>
<#-- On a slow line the words come before the pictures, also before those in the first view.
     In a list, without words beside it, a picture is small, and its smallest copy will do. -->
<#if !tag?has_content && !caption?has_content && files?has_content><#local files = [files?first]></#if>
<#local element = (tag?has_content || caption?has_content)?then("figure", "div")>
<${element} class="photo">
  <#if files?has_content>
  <#local best = files?last>
  <img src="${frame.up}${best.path}" width="${best.width}" height="${best.height}" alt="${alt}"<#if files?size gt 1> srcset="<#list files as file>${frame.up}${file.path} ${file.width}w<#sep>, </#list>" sizes="(min-width: 60rem) 30rem, 100vw"</#if><#if first> fetchpriority="low"<#else> loading="lazy"</#if> decoding="async">
  <#else>
  <p class="photo__words">${alt}</p>
  </#if>
  <#if tag?has_content || caption?has_content>
  <figcaption>
    <#if tag?has_content><span class="photo__tag">${tag}</span> </#if>${caption}
    <#if light?has_content || credit?has_content><small class="photo__credit">${light} ${credit}</small></#if>
  </figcaption>
  </#if>
</${element}>
</#macro>
