// No words lie on a picture, where their contrast is left to chance.
const pictures = all("img, picture, canvas, video").map(element => ({ element, box: element.getBoundingClientRect() }));
const within = (words, cut) => ({
  left: Math.max(words.left, cut.left), right: Math.min(words.right, cut.right),
  top: Math.max(words.top, cut.top), bottom: Math.min(words.bottom, cut.bottom)
});
const meets = (line, box) => Math.min(line.right, box.right) - Math.max(line.left, box.left) > 4
  && Math.min(line.bottom, box.bottom) - Math.max(line.top, box.top) > 4;
const found = [];
all("body *").filter(element => ownText(element) && !element.closest("svg")).forEach(element => {
  const range = document.createRange();
  range.selectNodeContents(element);
  // Line by line: where words flow on in the next column, one box around them all holds what stands between.
  const lines = Array.from(range.getClientRects());
  // Words that are there for the ear only are cut to a dot: nobody sees what lies beyond it.
  const cut = getComputedStyle(element).overflow === "hidden" ? element.getBoundingClientRect() : undefined;
  pictures.forEach(picture => {
    if (lines.some(line => meets(cut ? within(line, cut) : line, picture.box))) {
      found.push(told(element) + " lies over " + picture.element.getAttribute("src"));
    }
  });
  for (let at = element; at; at = at.parentElement) {
    if (getComputedStyle(at).backgroundImage.includes("url(")) { found.push(told(element) + " has a picture behind it"); break; }
  }
});
return found;
