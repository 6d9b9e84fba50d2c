// The reader's own spacing of WCAG 2.2, 1.4.12: line 1.5, paragraph 2, letter 0.12 em, word 0.16 em.
const sheet = new CSSStyleSheet();
sheet.replaceSync("* { line-height: 1.5 !important; letter-spacing: 0.12em !important; word-spacing: 0.16em !important }"
  + " p { margin-block-end: 2em !important }");
document.adoptedStyleSheets = [sheet];
return [];
