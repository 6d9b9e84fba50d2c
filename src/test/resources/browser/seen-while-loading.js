// Keeps whether a part can be seen in the first two frames that are drawn while the rest of the page is held back, and then
// asks for the rest; and once more when the page is whole.
window.__seen = { coming: [], whole: [] };
{
  const seen = window.__seen;
  const look = () => {
    const part = document.querySelector("PART");
    if (part && document.readyState === "loading") {
      // Behind these frames the rest may be there, though it is not read to its end.
      if (seen.coming.length < 2) {
        seen.coming.push(getComputedStyle(part).visibility);
        if (seen.coming.length === 2) { new Image().src = "SIGN"; }
      }
    } else if (part && document.readyState === "complete") {
      seen.whole.push(getComputedStyle(part).visibility);
      return;
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
