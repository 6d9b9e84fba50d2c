// What jumped, once the page has been drawn as it stands.
const done = arguments[0];
requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(() => done(window.__jumps), 50)));
