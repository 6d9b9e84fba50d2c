// Keeps whether the first table can be seen in each frame that is drawn while the page still comes in, and asks for the rest
// of the page when it has seen enough.
window.__tables = { coming: [], whole: [] };
{
  const seen = window.__tables;
  const look = () => {
    const table = document.querySelector("main table");
    if (table && document.readyState === "loading") {
      seen.coming.push(getComputedStyle(table).visibility);
      if (seen.coming.length === 2) { new Image().src = "rest-of-the-page.png"; }
    } else if (table && document.readyState === "complete") {
      seen.whole.push(getComputedStyle(table).visibility);
      return;
    }
    requestAnimationFrame(look);
  };
  requestAnimationFrame(look);
}
