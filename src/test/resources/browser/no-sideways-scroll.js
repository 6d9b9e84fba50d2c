// Nothing reaches past the window's edge, but for what scrolls in a frame of its own.
// It is asked of screens (WCAG 2.2, 1.4.10) and of paper from A5 on (559 px): wide tables have no frame to scroll in on paper.
const width = document.documentElement.clientWidth;
if (matchMedia("print").matches && width < 559) { return []; }
const frames = element => {
  for (let at = element.parentElement; at && at !== document.body; at = at.parentElement) {
    if (["auto", "scroll"].includes(getComputedStyle(at).overflowX)) { return true; }
  }
  return false;
};
// What runs from right to left reaches past the left edge.
const leftward = document.documentElement.dir === "rtl";
const reach = element => leftward ? width - element.getBoundingClientRect().left : element.getBoundingClientRect().right;
const past = all("body *").filter(element => reach(element) > width + 1 && !frames(element));
const found = past.filter(element => !past.some(other => other !== element && element.contains(other)))
  .map(element => told(element) + " ends at " + Math.round(reach(element)) + " px of " + width);
if (found.length > 4) { found.splice(4, found.length, "and " + (found.length - 4) + " parts more"); }
if (found.length === 0 && document.documentElement.scrollWidth > width) {
  found.push("the page is " + document.documentElement.scrollWidth + " px wide in a window of " + width + " px");
}
return found;
