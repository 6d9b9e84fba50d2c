// Every rule for WCAG 2.2 up to AA and good practice; target size (2.5.8) is off by default in the library, and is asked of
// screens alone. The rules of colour take most of the time, growing with the square of a page's length: they are asked of one
// text of each kind of the page (same element, classes, colours, size and weight on the same ground), which looks like all
// others of its kind. Where only the colours of a page differ from a run before, they are enough.
const done = arguments[arguments.length - 1];
const only = arguments[0];
const colours = ["color-contrast", "link-in-text-block"];
const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"];
const layout = { "target-size": { enabled: !matchMedia("print").matches } };
colours.forEach(rule => { layout[rule] = { enabled: false }; });
const kinds = new Map();
all("body *").filter(ownText).forEach(element => {
  const style = getComputedStyle(element), behind = ground(element);
  kinds.set([element.tagName, element.className, element.parentElement.className, style.color, style.fontSize, style.fontWeight,
    style.textDecorationLine, behind.r, behind.g, behind.b].join(), element);
});
const found = result => result.violations.flatMap(rule => rule.nodes.map(node => rule.id + ": " + node.html.slice(0, 160) + " " +
  (node.any.concat(node.all, node.none).map(check => check.message)[0] || rule.help)));
(async () => {
  const common = { resultTypes: ["violations"], iframes: false };
  const seen = await axe.run({ include: Array.from(kinds.values()) },
    Object.assign({ runOnly: { type: "rule", values: colours } }, common));
  const laid = only === "colours" ? [] : found(await axe.run(document,
    Object.assign({ runOnly: { type: "tag", values: tags }, rules: layout }, common)));
  done(found(seen).concat(laid));
})().catch(failure => done(["axe failed: " + failure]));
