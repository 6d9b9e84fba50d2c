// Setting a control changes nothing but itself (WCAG 2.2, 3.2.2): the page stays, and so does the focus.
const done = arguments[arguments.length - 1];
const before = location.pathname;
const found = [];
window.addEventListener("beforeunload", () => done(["the page was left when a control was set"]));
const submit = HTMLFormElement.prototype.submit;
HTMLFormElement.prototype.submit = function () { found.push("a form was sent when a control was set"); };
// What cannot be set yet has no focus to lose.
all("input:enabled:not([type=hidden]):not([type=submit]):not([type=file]), select:enabled, textarea:enabled").forEach(control => {
  const was = control.type === "checkbox" || control.type === "radio" ? control.checked : control.value;
  control.focus();
  if (control.tagName === "SELECT") {
    control.selectedIndex = (control.selectedIndex + 1) % Math.max(1, control.options.length);
  } else if (control.type === "checkbox" || control.type === "radio") {
    control.checked = !control.checked;
  } else {
    control.value = control.type === "range" || control.type === "number" ? control.min || "0" : "a";
  }
  control.dispatchEvent(new Event("input", { bubbles: true }));
  control.dispatchEvent(new Event("change", { bubbles: true }));
  if (document.activeElement !== control) { found.push(told(control) + " lost the focus when it was set"); }
  if (typeof was === "boolean") { control.checked = was; } else { control.value = was; }
  control.dispatchEvent(new Event("input", { bubbles: true }));
  control.dispatchEvent(new Event("change", { bubbles: true }));
  control.blur();
});
setTimeout(() => {
  HTMLFormElement.prototype.submit = submit;
  if (location.pathname !== before) { found.push("the page was left when a control was set"); }
  done(found);
}, 30);
