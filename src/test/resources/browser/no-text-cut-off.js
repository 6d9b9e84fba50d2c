// Text fits the box that was made for it. What is hidden for the eye on purpose is one pixel high and is left out.
return all("body *").filter(element => ownText(element) && !element.closest("svg, math")).filter(element => {
  const style = getComputedStyle(element);
  if (style.display.startsWith("inline") && style.display !== "inline-block" || element.clientHeight < 2) { return false; }
  if (element.closest("details:not([open]) > :not(summary)")) { return false; }
  const spare = parseFloat(style.fontSize) * 0.6;
  const cutSideways = ["hidden", "clip"].includes(style.overflowX) && element.scrollWidth > element.clientWidth + 2;
  return cutSideways || element.scrollHeight > element.clientHeight + spare && !["auto", "scroll"].includes(style.overflowY);
}).map(element => told(element) + " needs " + element.scrollHeight + " px and has " + element.clientHeight);
