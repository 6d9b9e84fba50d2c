// Nothing moves, plays or goes on by itself (WCAG 2.2, 2.2.2); seen before anyone touched the page.
const found = Array.from(document.querySelectorAll("marquee, blink, [autoplay], meta[http-equiv=refresh i]")).map(told);
document.getAnimations().forEach(animation => found.push("animation " + (animation.animationName || animation.id || "without a name")));
window.__witness.intervals.forEach(pause => found.push("something is done every " + pause));
return found;
