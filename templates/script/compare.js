/* Lays the picture after treatment over the one before, with a native slider and three buttons. The two pictures
   stay below with their captions. */
(function () {
  "use strict";
  Array.prototype.forEach.call(document.querySelectorAll("[data-compare]"), function (comparison) {
    var desk = comparison.querySelector(".comparison__desk");
    var stack = desk.querySelector(".comparison__stack");
    var slider = desk.querySelector("input");
    var buttons = Array.prototype.slice.call(desk.querySelectorAll("button"));
    Array.prototype.forEach.call(comparison.querySelectorAll(".comparison__pair img"), function (image) {
      var copy = image.cloneNode(false);
      copy.alt = "";
      stack.appendChild(copy);
    });
    function show(value) {
      slider.value = String(value);
      comparison.style.setProperty("--after", value + "%");
      slider.setAttribute("aria-valuetext", comparison.getAttribute("data-compare").replace("[n]", String(value)));
      buttons.forEach(function (button) {
        button.setAttribute("aria-pressed", String(Number(button.value) === value));
      });
    }
    slider.addEventListener("input", function () { show(Number(slider.value)); });
    buttons.forEach(function (button) {
      button.addEventListener("click", function () { show(Number(button.value)); });
    });
    show(50);
    desk.hidden = false;
  });
}());
