// Every number that the page tells, in order; controls that only scripts bring tell none.
const walker = document.createTreeWalker(document.querySelector("main") || document.body, NodeFilter.SHOW_TEXT);
const numbers = [];
while (walker.nextNode()) {
  const holder = walker.currentNode.parentElement;
  if (holder.closest("script, style, [role=timer], [role=status], button")) { continue; }
  numbers.push(...(walker.currentNode.data.match(/[\u2212-]?\d+(?:[.,]\d+)*/g) || []));
}
return numbers;
