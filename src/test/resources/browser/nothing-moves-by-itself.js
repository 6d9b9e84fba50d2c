// Nothing moves, plays or goes on by itself (WCAG 2.2, 2.2.2); seen before anyone touched the page. What the page has
// asked to be done again and again is done at once, so that slow changes are seen as well.
const found = Array.from(document.querySelectorAll("marquee, blink, [autoplay], meta[http-equiv=refresh i]")).map(told);
document.getAnimations().forEach(animation => found.push("animation " + (animation.animationName || animation.id || "without a name")));
window.__witness.intervals.forEach(repeated => {
  const before = document.body.outerHTML;
  repeated.work();
  if (document.body.outerHTML !== before) { found.push("the page changes every " + repeated.pause + " ms"); }
});
return found;
