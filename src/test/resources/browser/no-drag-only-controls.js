// Whatever can be dragged can also be worked by a press or a key (WCAG 2.2, 2.5.7 and 2.1.1).
const found = all("[draggable=true], [role=slider]:not(input)").map(element => told(element) + " can only be dragged");
all("input[type=range]").forEach(slider => {
  const home = slider.closest("fieldset, form, section, figure, div");
  if (!home || !home.querySelector("button, input[type=number], input[type=radio], select")) {
    found.push(told(slider) + " is a slider without buttons");
  }
});
const drags = ["pointerdown", "mousedown", "touchstart", "pointermove", "mousemove", "touchmove", "dragstart"];
const heard = window.__witness.pointers;
heard.filter(one => drags.includes(one.kind) && isSeen(one.element)).forEach(one => {
  const native = one.element.matches("input, button, select, textarea, a[href], summary");
  const other = heard.some(two => two.element === one.element && ["click", "keydown", "input", "change"].includes(two.kind));
  if (!native && !other) { found.push(told(one.element) + " hears " + one.kind + " and no press or key"); }
});
return found;
