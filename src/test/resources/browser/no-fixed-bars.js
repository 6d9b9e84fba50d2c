// No bar stays while the page moves (WCAG 2.2, 2.4.11).
return all("body *").filter(element => ["fixed", "sticky"].includes(getComputedStyle(element).position)).map(told);
