// Keeps what jumps on a page while it comes in, in the words of the Layout Instability API.
window.__jumps = [];
new PerformanceObserver(seen => seen.getEntries().forEach(jump => {
  window.__jumps.push(jump.value.toFixed(4) + ": " + jump.sources.map(source => source.node && (source.node.className || source.node.nodeName)).join(", "));
})).observe({ type: "layout-shift", buffered: true });
