// Notes what is wrong at each stop of a tour when the key that leaves it comes, until the focus comes round or leaves the page.
window.__badOutlines = [];
window.__obscured = [];
const toured = new Set();
let isOnTour = true;
let keys = 0;
function note() {
  const stop = JSON.parse(window.__where());
  isOnTour = isOnTour && stop !== null && !toured.has(stop.stop);
  if (isOnTour) {
    toured.add(stop.stop);
    stop.faults.forEach(fault =>
      (fault.startsWith("outline") ? window.__badOutlines : window.__obscured).push(stop.told + ": " + fault));
  }
}
window.addEventListener("keydown", event => {
  if (event.key === "Tab" && isOnTour && keys++ > 0) { note(); }
}, true);
// Whether there are stops left; the last one of a page that takes no more keys is left by none.
window.__goesOn = function () {
  isOnTour = isOnTour && JSON.parse(window.__where()) !== null;
  return isOnTour;
};
return [];
