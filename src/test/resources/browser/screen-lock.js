// A browser that lets a page keep the screen on, or refuses it, as REFUSES says; it lets go of the screen when the page is
// left, as browsers do. What the page asked is kept in __asked; __away(true) leaves the page, __away(false) comes back.
window.__asked = 0;
let held = null;
let away = false;
class Held extends EventTarget {
  release() {
    held = null;
    this.dispatchEvent(new Event("release"));
    return Promise.resolve();
  }
}
Object.defineProperty(Navigator.prototype, "wakeLock", { configurable: true, get: () => ({ request: () => {
  window.__asked++;
  if (REFUSES) { return Promise.reject(new DOMException("not now", "NotAllowedError")); }
  held = new Held();
  return Promise.resolve(held);
} }) });
Object.defineProperty(Document.prototype, "hidden", { configurable: true, get: () => away });
window.__away = left => {
  away = left;
  if (left && held) { held.release(); }
  document.dispatchEvent(new Event("visibilitychange"));
};
