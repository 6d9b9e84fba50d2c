// Every rule for WCAG 2.2 up to AA and good practice; target size (2.5.8) is off by default in the library. Where only
// the colours of a page differ from a run before, the rules that look at colours are enough.
const done = arguments[arguments.length - 1];
const only = arguments[0] === "colours"
  ? { type: "rule", values: ["color-contrast", "link-in-text-block"] }
  : { type: "tag", values: ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa", "best-practice"] };
axe.run(document, {
  runOnly: only,
  rules: only.type === "tag" ? { "target-size": { enabled: true } } : {},
  resultTypes: ["violations"],
  iframes: false
}).then(
  result => done(result.violations.flatMap(rule => rule.nodes.map(node => rule.id + ": " + node.html.slice(0, 160) + " " +
    (node.any.concat(node.all, node.none).map(check => check.message)[0] || rule.help)))),
  failure => done(["axe failed: " + failure])
);
