document.querySelectorAll("details").forEach(part => { part.open = true; });
window.scrollTo(0, 0);
if (document.activeElement) { document.activeElement.blur(); }
return [];
