<#-- Line drawings of how a thing is done, each with a text of the same content.
     drawings  each with id, title, description, width, height, marks, caption -->
<#macro drawingRow drawings>
<#import "/parts/drawing.ftl" as part>
<@part.drawings drawings />
</#macro>
