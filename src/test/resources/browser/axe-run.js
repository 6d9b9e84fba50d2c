// Every rule for WCAG 2.2 up to AA and good practice; target size (2.5.8) is off by default in the library, and is asked of
// screens alone. The rules of colour take most of the time, growing with the square of a page's length: they are asked of one
// text of each kind of the page (same element, classes, colours, size and weight on the same ground), which looks like all
// others of its kind. Where only the colours of a page differ from a run before, they are enough.
const done = arguments[arguments.length - 1];
const only = arguments[0];
const colours = ["color-contrast", "link-in-text-block"];
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];
const layout = { "target-size": { enabled: !matchMedia("print").matches } };
const kinds = new Map();
all("body *").filter(ownText).forEach(element => {
  const style = getComputedStyle(element), behind = ground(element);
  kinds.set([element.tagName, element.className, element.parentElement.className, style.color, style.fontSize, style.fontWeight,
    style.textDecorationLine, behind.r, behind.g, behind.b].join(), element);
});
const found = result => result.violations.flatMap(rule => rule.nodes.map(node => rule.id + ": " + node.html.slice(0, 160) + " " +
  (node.any.concat(node.all, node.none).map(check => check.message)[0] || rule.help)));
// Those kinds of text are all that a rule of colour looks at, so that one run, which has to read the whole page first, is enough.
// The library offers no way to narrow a rule that keeps what the rule itself leaves out: it is done in its own list.
const shown = new Set(kinds.values());
const isShown = element => { for (let at = element; at; at = at.parentElement) { if (shown.has(at)) { return true; } } return false; };
colours.forEach(id => {
  const rule = axe._audit.rules.find(one => one.id === id);
  rule.ofEveryText = rule.ofEveryText || rule.matches;
  rule.matches = function (element) { return isShown(element) && rule.ofEveryText.apply(this, arguments); };
});
const asked = only === "colours" ? { runOnly: { type: "rule", values: colours } } : { runOnly: { type: "tag", values: tags }, rules: layout };
axe.run(document, Object.assign(asked, { resultTypes: ["violations"], iframes: false }))
  .then(result => done(found(result))).catch(failure => done(["axe failed: " + failure]));
