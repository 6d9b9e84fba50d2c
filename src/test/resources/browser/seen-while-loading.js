// Keeps whether a part can be seen in each frame that is drawn while the page still comes in, and asks for the rest
// of the page when it has seen enough.
window.__seen = { coming: [], whole: [] };
{
  const seen = window.__seen;
  const look = () => {
    const part = document.querySelector("PART");
    if (part && document.readyState === "loading") {
      seen.coming.push(getComputedStyle(part).visibility);
      if (seen.coming.length === 2) { new Image().src = "SIGN"; }
    } else if (part && document.readyState === "complete") {
      seen.whole.push(getComputedStyle(part).visibility);
      return;
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
