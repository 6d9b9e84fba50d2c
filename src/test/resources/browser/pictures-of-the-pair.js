return all("[data-compare] .comparison__pair img").map(picture => picture.getAttribute("src"));
