// Every control that a reader should come to by keyboard and that the tour has not come to.
const stops = window.__stops || new Map();
return Array.from(document.querySelectorAll(
  "a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex], audio[controls], [onclick], [role=button], [role=slider]"))
  .filter(element => element.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }))
  .filter(element => !element.disabled && !element.matches("main[tabindex='-1'], [tabindex='-1']:not(a, button, input)"))
  .filter(element => !(element.type === "radio" && !element.checked))
  .filter(element => !stops.has(element)).map(told);
