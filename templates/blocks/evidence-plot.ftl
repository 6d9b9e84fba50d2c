<#-- Results of several cases on one scale, and the table of the same numbers; of a single case without a drawing.
     key    what the marks stand for; empty without a drawing
     axis   the scale, above the rows; a drawing without a caption; may be empty
     rows   each with link, language, about, has (the values it can be filtered by), drawing
     table  the same numbers -->
<#macro evidencePlot key axis rows table>
<#import "/parts/drawing.ftl" as part>
<div class="evidence-plot">
  <div class="evidence-plot__drawn">
    <#if axis?has_content>
    <p class="evidence-plot__key">${key}</p>
    <div class="evidence-plot__axis"><@part.svg axis /></div>
    </#if>
    <ol class="evidence-plot__rows">
      <#list rows as row>
      <li data-has="${row.has}"><span class="evidence-plot__case"><a href="${row.link.href}" lang="${row.language}">${row.link.text}</a><#if row.about?has_content> <span class="evidence-plot__about">${row.about}</span></#if></span>
        <#if row.drawing?has_content><@part.svg row.drawing table.id /></#if>
      </li>
      </#list>
    </ol>
  </div>
  <div class="evidence-plot__numbers"><@show table /></div>
</div>
</#macro>
