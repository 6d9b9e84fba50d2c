// No words lie on a picture, where their contrast is left to chance.
const pictures = all("img, picture, canvas, video").map(element => ({ element, box: element.getBoundingClientRect() }));
const found = [];
all("body *").filter(element => ownText(element) && !element.closest("svg")).forEach(element => {
  const range = document.createRange();
  range.selectNodeContents(element);
  const box = range.getBoundingClientRect();
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
