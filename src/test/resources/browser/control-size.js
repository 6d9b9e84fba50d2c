// 44 x 44 px for every control. Links set in a line of text are exempt (WCAG 2.2, 2.5.8, "inline"); one that stands
// alone in its block still has the 24 px that the criterion asks for.
return all("a[href], button, input:not([type=hidden]), select, textarea, summary, [role=button], [role=slider]")
  .filter(element => !element.closest("svg") && !(element.tagName === "A" && isInText(element)))
  .flatMap(element => {
    const inline = element.tagName === "A" && getComputedStyle(element).display === "inline" && !element.closest("nav");
    const least = inline ? 23.5 : 43.5;
    const label = element.closest("label") || (element.id && document.querySelector('label[for="' + element.id + '"]'));
    const ticks = element.matches("[type=checkbox], [type=radio]");
    const boxes = [element].concat(ticks && label ? [label] : []).map(part => part.getBoundingClientRect());
    const width = Math.max(...boxes.map(box => box.width)), height = Math.max(...boxes.map(box => box.height));
    return width >= least && height >= least ? []
      : [told(element) + " is " + Math.round(width) + " x " + Math.round(height) + " px, at least " + Math.ceil(least)];
  });
