return all(".comparison__pair img").map(picture => picture.getAttribute("src"));
