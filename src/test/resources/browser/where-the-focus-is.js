// Prepares the question where the focus is: the element, how it shows it, and whether something lies over it.
window.__stops = new Map();
window.__where = function () {
  const element = document.activeElement;
  if (!element || element === document.body || element === document.documentElement) { return JSON.stringify(null); }
  if (!window.__stops.has(element)) { window.__stops.set(element, window.__stops.size); }
  const style = getComputedStyle(element);
  const faults = [];
  const width = parseFloat(style.outlineWidth) || 0;
  if (style.outlineStyle === "none" || width < 2) {
    faults.push("outline " + style.outlineStyle + " of " + width + " px");
  } else if (style.outlineStyle !== "auto") {
    const inside = parseFloat(style.outlineOffset) < 0;
    const ratio = contrast(colour(style.outlineColor), ground(inside ? element : element.parentElement || element));
    if (ratio < 3) { faults.push("outline stands out only " + ratio.toFixed(2) + ":1"); }
  }
  const box = element.getClientRects()[0] || element.getBoundingClientRect();
  if (box.width < 2 || box.height < 2 || box.bottom <= 0 || box.top >= innerHeight || box.right <= 0 || box.left >= innerWidth) {
    faults.push("is not in the window");
  } else {
    const x = share => box.left + box.width * share, y = share => box.top + box.height * share;
    const points = [[0.5, 0.5], [0.1, 0.2], [0.9, 0.2], [0.1, 0.8], [0.9, 0.8]].map(p => [x(p[0]), y(p[1])])
      .filter(p => p[0] > 0 && p[1] > 0 && p[0] < innerWidth - 1 && p[1] < innerHeight - 1);
    const free = points.filter(p => {
      const top = document.elementFromPoint(p[0], p[1]);
      return top && (element.contains(top) || top.contains(element) || (element.labels && Array.from(element.labels).some(l => l.contains(top))));
    });
    if (free.length * 2 < points.length) { faults.push("lies under something else"); }
  }
  return JSON.stringify({ stop: window.__stops.get(element), told: told(element), faults: faults });
};
return [];
