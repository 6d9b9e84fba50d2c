// A short line, all bold, alone above something else, is a heading in disguise (WCAG 2.2, 1.3.1).
// The drawn copies of a bottle's label are left out: they show what is printed, they do not order the page.
const outside = "h1, h2, h3, h4, h5, h6, summary, label, legend, figcaption, caption, th, td, dt, dd, button, a, nav, svg, math, ol";
return all("main p, main div").filter(element => !element.closest(outside) && !element.closest("[class~=label]")).filter(element => {
  const words = element.textContent.trim();
  if (!/\p{L}{3}/u.test(words) || words.length > 60 || /[.!?:…;,]$/.test(words) || !element.nextElementSibling) { return false; }
  if (element.querySelector("h1, h2, h3, h4, h5, h6, p, div, ul, ol, dl, table, figure, button, input, a")) { return false; }
  const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  let bold = true;
  while (walker.nextNode()) {
    if (walker.currentNode.data.trim() && parseInt(getComputedStyle(walker.currentNode.parentElement).fontWeight, 10) < 600) { bold = false; }
  }
  return bold;
}).map(told);
