document.adoptedStyleSheets = [];
return [];
