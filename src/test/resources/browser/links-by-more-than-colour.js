// A link in running text is underlined, so that it is not told by its colour alone (WCAG 2.2, 1.4.1).
return all("a[href]").filter(isInText).filter(link => {
  const style = getComputedStyle(link);
  return !style.textDecorationLine.includes("underline")
    && (style.borderBottomStyle === "none" || parseFloat(style.borderBottomWidth) === 0);
}).map(told);
