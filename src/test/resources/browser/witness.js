// Runs before anything of the page: notes what the page does that nobody sees at the end.
(function () {
  const seen = { violations: [], intervals: [], pointers: [], said: [], errors: [] };
  Object.defineProperty(window, "__witness", { value: seen });
  document.addEventListener("securitypolicyviolation", event => {
    seen.violations.push(event.violatedDirective + " " + (event.blockedURI || "") + " " + (event.sample || ""));
  });
  window.addEventListener("error", event => seen.errors.push(String(event.message)), true);
  window.addEventListener("unhandledrejection", event => seen.errors.push(String(event.reason)));
  const every = window.setInterval;
  window.setInterval = function (work, pause) {
    seen.intervals.push({ work: work, pause: pause });
    return every.apply(window, arguments);
  };
  const listen = EventTarget.prototype.addEventListener;
  EventTarget.prototype.addEventListener = function (kind) {
    if (this instanceof Element) { seen.pointers.push({ element: this, kind: kind }); }
    return listen.apply(this, arguments);
  };
  listen.call(document, "DOMContentLoaded", () => {
    new MutationObserver(changes => {
      const spoke = new Set();
      changes.forEach(change => {
        const at = change.target.nodeType === 1 ? change.target : change.target.parentElement;
        const region = at && at.closest("[role=status], [role=alert], [role=log], [aria-live]:not([aria-live=off])");
        if (region) { spoke.add(region); }
      });
      spoke.forEach(region => {
        const words = region.textContent.trim();
        if (words) { seen.said.push(words); }
      });
    }).observe(document.documentElement, { subtree: true, childList: true, characterData: true });
  });
}());
