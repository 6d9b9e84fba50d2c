<#-- The layout of every page.
     page             the page: language, title, frame (what surrounds it), blocks, scripts, linked data
     parts(block)     the components of a block's record, which are the arguments of its macro
     macroOf(block)   the name of that macro
     renditions(c, p) the files made of a case's picture, narrowest first
     takenOf(what)    the file to be taken away that holds a page, or has a form, with its path and size, if one was made
     A block's template is blocks/<name>.ftl; show writes one, also from inside another. -->
<#macro show block>
  <#import "/blocks/" + block.name() + ".ftl" as lib>
  <@lib[macroOf(block)]?with_args(parts(block)) />
</#macro>
<#macro showAll blocks><#list blocks as block><@show block /></#list></#macro>
<#global show = show showAll = showAll frame = page.frame>
<!DOCTYPE html>
<html lang="${page.language}" dir="${frame.direction}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' data:; font-src 'self'; connect-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'self' file:">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${frame.headTitle}</title>
<meta name="description" content="${page.description}">
<meta name="color-scheme" content="light dark">
<meta property="og:title" content="${page.title}">
<meta property="og:type" content="article">
<meta property="og:description" content="${page.description}">
<meta property="og:locale" content="${page.language}">
<meta property="og:site_name" content="${frame.siteName}">
<#if frame.web?has_content>
<meta property="og:url" content="${frame.web.address}">
<#if frame.web.picture?has_content>
<meta property="og:image" content="${frame.web.picture}">
<meta property="og:image:width" content="${frame.web.width()}">
<meta property="og:image:height" content="${frame.web.height()}">
<meta property="og:image:alt" content="${frame.web.alt}">
</#if>
</#if>
<link rel="icon" href="${frame.up}assets/icon.svg" type="image/svg+xml">
<#list frame.otherLanguages as other>
<link rel="alternate" href="${other.href}" hreflang="${other.language}">
</#list>
<link rel="stylesheet" href="${frame.up}assets/site.css">
<#if frame.bringsFonts>
<link rel="stylesheet" href="${frame.up}assets/fonts.css">
</#if>
<#list page.scripts as script>
<script defer src="${frame.up}assets/${script}"></script>
</#list>
</head>
<body class="page page--${page.kind}<#if frame.translated?has_content> page--translated</#if><#list frame.onScreenOnly as part> on-screen-only--${part}</#list>">
<a class="skip" href="#content">${frame.words.skip}</a>
<header class="masthead">
  <p class="masthead__name"><a href="${frame.up}index.html">${frame.siteName}</a></p>
  <nav class="ways" aria-label="${frame.words.ways}">
    <ul>
      <#list frame.ways as way>
      <li><a href="${way.href}"<#if way.current> aria-current="page"</#if>>${way.text}</a></li>
      </#list>
    </ul>
  </nav>
  <#if frame.audience?has_content><p class="audience">${frame.audience}</p></#if>
  <#if frame.translated?has_content><p class="translated">${frame.translated}</p></#if>
</header>
<#if frame.otherLanguages?has_content>
<nav class="languages" aria-label="${frame.words['other-languages']}">
  <ul>
    <#list frame.otherLanguages as other>
    <li><a href="${other.href}" lang="${other.language}"<#if other.direction != frame.direction> dir="${other.direction}"</#if> hreflang="${other.language}">${other.name}</a></li>
    </#list>
  </ul>
</nav>
</#if>
<#if frame.casePages?size gt 1>
<nav class="tabs" aria-label="${frame.words['case-pages']}">
  <ul>
    <#list frame.casePages as way>
    <li><a href="${way.href}"<#if way.current> aria-current="page"</#if>>${way.text}</a></li>
    </#list>
  </ul>
</nav>
</#if>
<main class="content" id="content" tabindex="-1">
<@show page.blocks[0] />
<#if frame.retold?has_content>
<p class="retold">${frame.retold.by} <a href="${frame.retold.source.href}">${frame.retold.source.text}</a>. ${frame.retold.terms}</p>
</#if>
<#assign sections = page.blocks?filter(block -> ["section", "briefing"]?seq_contains(block.name()))>
<#-- Long pages on which one thing is looked for. -->
<#if ["step-sheet", "preparation", "case-study", "results", "home"]?seq_contains(page.kind)>
<nav class="contents" aria-label="${frame.words.contents}">
  <ul>
    <#-- A page that was taken along offers itself no more. -->
    <#list sections?filter(section -> section.id != "take-along") as section>
    <#-- What was measured may bear the name of a term, which leads to the glossary. -->
    <li><a href="#${section.id}"<#if section.id?starts_with("section-result")> aria-label="${frame.words.contents}: ${section.heading}"</#if>>${section.heading}</a></li>
    </#list>
  </ul>
</nav>
</#if>
<@showAll page.blocks[1..] />
</main>
<#-- Behind the words that it repeats, for a page is packed with what stood shortly before. -->
<#list page.linkedData as json>
<script type="application/ld+json">${json}</script>
</#list>
<footer class="foot">
  <#-- Once a page: not where its head begins with the same words. -->
  <#assign head = page.blocks[0]>
  <#if !(head.name() == "opening" && head.notice?has_content && head.notice.text == frame.notice)>
  <p class="foot__notice">${frame.notice}</p>
  </#if>
  <#if frame.demo?has_content><p>${frame.demo}</p></#if>
  <#if frame.licence?has_content><p>${frame.licence}</p></#if>
  <#list frame.onScreenOnly as part><p class="not-printed">${frame.words["not-printed-" + part]}</p></#list>
  <nav class="foot__ways" aria-label="${frame.words['all-ways']}">
    <ul>
      <#list frame.allWays as way>
      <li><a href="${way.href}"<#if way.current> aria-current="page"</#if>>${way.text}</a></li>
      </#list>
    </ul>
  </nav>
</footer>
</body>
</html>
