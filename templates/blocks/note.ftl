<#-- A remark set apart; its tone is told by a word and a shape, never by colour alone.
     tone  "plain", "care" or "danger"
     word  the word of the tone
     text  what it says -->
<#macro note tone word text>
<div class="note note--${tone}" role="note">
  <p><strong class="note__word">${word}</strong> ${text}</p>
</div>
</#macro>
