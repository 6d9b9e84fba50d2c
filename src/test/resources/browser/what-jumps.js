// Keeps what jumps on a page while it comes in, in the words of the Layout Instability API. A column of a table that gets its last
// rows in a second paint moves by a pixel or two, as columns by their content do; that is less than a thousandth of the window.
window.__jumps = [];
new PerformanceObserver(seen => seen.getEntries().filter(jump => jump.value >= 0.001).forEach(jump => {
  window.__jumps.push(jump.value.toFixed(4) + ": " + jump.sources.map(source => source.node && (source.node.className || source.node.nodeName)).join(", "));
})).observe({ type: "layout-shift", buffered: true });
