// On paper, what a closed part holds is there as well. What a sheet leaves off its paper by name (display: none) is a
// choice of that sheet; what is merely folded away is a loss.
return Array.from(document.querySelectorAll("details:not([open])")).filter(part => part.checkVisibility()).filter(part =>
  Array.from(part.children).filter(child => child.tagName !== "SUMMARY" && getComputedStyle(child).display !== "none").some(child =>
    child.getBoundingClientRect().height === 0 || !child.checkVisibility({ visibilityProperty: true }))
).map(told);
