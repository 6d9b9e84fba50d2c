// Text at 200 % of its size, WCAG 2.2, 1.4.4.
const sheet = new CSSStyleSheet();
sheet.replaceSync(":root { font-size: 200% !important }");
document.adoptedStyleSheets = [sheet];
return [];
