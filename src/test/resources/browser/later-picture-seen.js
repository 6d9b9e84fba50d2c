// The share of the later picture that is not cut away, by the edge at which it is cut.
const cut = getComputedStyle(document.querySelector("[data-compare] .comparison__stack img:last-child")).clipPath;
return 1 - parseFloat(cut.match(/([\d.]+)(?:px|%)?\)$/)[1]) / 100;
