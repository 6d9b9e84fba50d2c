// On paper, what a closed part holds is there as well.
return Array.from(document.querySelectorAll("details:not([open])")).filter(part => part.checkVisibility()).filter(part =>
  Array.from(part.children).filter(child => child.tagName !== "SUMMARY").some(child =>
    child.getBoundingClientRect().height === 0 || !child.checkVisibility({ visibilityProperty: true }))
).map(told);
