// A control's edge, or its whole ground, stands out 3:1 from what surrounds it (WCAG 2.2, 1.4.11).
return all("button, input:not([type=hidden]), select, textarea").filter(element => !element.disabled).flatMap(element => {
  const style = getComputedStyle(element);
  if (element.matches("[type=range], [type=checkbox], [type=radio]") && style.appearance !== "none") { return []; }
  const around = ground(element.parentElement);
  const edge = ["Top", "Right", "Bottom", "Left"].map(side =>
    style["border" + side + "Style"] === "none" || parseFloat(style["border" + side + "Width"]) === 0 ? 1
      : contrast(colour(style["border" + side + "Color"]), around));
  const best = Math.max(Math.min(...edge), contrast(ground(element), around));
  return best >= 3 ? [] : [told(element) + " stands out only " + best.toFixed(2) + ":1"];
});
