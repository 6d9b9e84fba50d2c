// What can be seen, in which colours. Stands before every script that looks at a page.
function isSeen(element) {
  if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: true })) {
    return false;
  }
  const box = element.getBoundingClientRect();
  return box.width > 0 && box.height > 0 && box.right > 0;
}
function all(selector) {
  return Array.from(document.querySelectorAll(selector)).filter(isSeen);
}
function told(element) {
  const words = (element.getAttribute("aria-label") || element.textContent || "").trim().replace(/\s+/g, " ");
  const mark = typeof element.className === "string" && element.className ? "." + element.className.split(" ")[0] : "";
  return "<" + element.tagName.toLowerCase() + mark + "> " + words.slice(0, 60);
}
function ownText(element) {
  return Array.from(element.childNodes).filter(node => node.nodeType === 3).map(node => node.data).join("").trim();
}
function colour(text) {
  const numbers = (text.match(/[\d.]+(?:e-?\d+)?/g) || []).map(Number);
  if (text.startsWith("color(srgb")) {
    return { r: numbers[0] * 255, g: numbers[1] * 255, b: numbers[2] * 255, a: numbers.length > 3 ? numbers[3] : 1 };
  }
  return { r: numbers[0], g: numbers[1], b: numbers[2], a: numbers.length > 3 ? numbers[3] : 1 };
}
// The colour behind an element's content: its own background over those of what holds it, over the system's paper.
function ground(element) {
  const layers = [];
  for (let at = element; at; at = at.parentElement) {
    const paint = colour(getComputedStyle(at).backgroundColor);
    if (paint.a > 0) { layers.push(paint); }
    if (paint.a === 1) { break; }
  }
  let seen = { r: 255, g: 255, b: 255, a: 1 };
  layers.reverse().forEach(layer => {
    seen = {
      r: layer.r * layer.a + seen.r * (1 - layer.a), g: layer.g * layer.a + seen.g * (1 - layer.a),
      b: layer.b * layer.a + seen.b * (1 - layer.a), a: 1
    };
  });
  return seen;
}
// Relative luminance and contrast ratio as WCAG 2.2 defines them.
function luminance(c) {
  const part = value => {
    const share = value / 255;
    return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  };
  return 0.2126 * part(c.r) + 0.7152 * part(c.g) + 0.0722 * part(c.b);
}
function contrast(one, other) {
  const a = luminance(one), b = luminance(other);
  return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
}
// The block that a piece of running text belongs to.
function block(element) {
  let at = element.parentElement;
  while (at && getComputedStyle(at).display.startsWith("inline")) { at = at.parentElement; }
  return at || document.body;
}
// A link in running text: other words than those of links stand in its block.
function isInText(link) {
  if (getComputedStyle(link).display !== "inline") { return false; }
  const around = block(link).cloneNode(true);
  around.querySelectorAll("a, button, summary, table, ul, ol, dl, figure, details").forEach(part => part.remove());
  return /[\p{L}\p{N}]/u.test(around.textContent);
}
