<#-- Workings that stand close together.
     heading   what they belong to
     workings  in order -->
<#macro workingList heading workings>
<div class="working-list">
  <h3 class="working-list__heading">${heading}</h3>
  <div class="working-list__all"><#list workings as working><@show working /></#list></div>
</div>
</#macro>
