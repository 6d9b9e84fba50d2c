// No words lie on a picture, where their contrast is left to chance.
const pictures = all("img, picture, canvas, video").map(element => ({ element, box: element.getBoundingClientRect() }));
const within = (words, cut) => ({
  left: Math.max(words.left, cut.left), right: Math.min(words.right, cut.right),
  top: Math.max(words.top, cut.top), bottom: Math.min(words.bottom, cut.bottom)
});
const found = [];
all("body *").filter(element => ownText(element) && !element.closest("svg")).forEach(element => {
  const range = document.createRange();
  range.selectNodeContents(element);
  const words = range.getBoundingClientRect();
  // Words that are there for the ear only are cut to a dot: nobody sees what lies beyond it.
  const box = getComputedStyle(element).overflow === "hidden" ? within(words, element.getBoundingClientRect()) : words;
  pictures.forEach(picture => {
    const across = Math.min(box.right, picture.box.right) - Math.max(box.left, picture.box.left);
    const down = Math.min(box.bottom, picture.box.bottom) - Math.max(box.top, picture.box.top);
    if (across > 4 && down > 4) { found.push(told(element) + " lies over " + picture.element.getAttribute("src")); }
  });
  for (let at = element; at; at = at.parentElement) {
    if (getComputedStyle(at).backgroundImage.includes("url(")) { found.push(told(element) + " has a picture behind it"); break; }
  }
});
return found;
