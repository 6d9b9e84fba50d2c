<#-- Blocks on a page of its own, with its style in it, so that it can be saved and printed anywhere.
     sheet   title, language, blocks
     style   the element that holds the styles of the site
     parts(block), macroOf(block) as in page.ftl -->
<#macro show block>
  <#import "/blocks/" + block.name() + ".ftl" as lib>
  <@lib[macroOf(block)]?with_args(parts(block)) />
</#macro>
<#macro showAll blocks><#list blocks as block><@show block /></#list></#macro>
<#global show = show showAll = showAll>
<!DOCTYPE html>
<html lang="${sheet.language}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${sheet.title}</title>
${style}
</head>
<body>
<main class="content">
<@showAll sheet.blocks />
</main>
</body>
</html>
