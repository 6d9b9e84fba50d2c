/* Lays the picture after treatment over the one before, with a native slider and three buttons. The two pictures
   stay below with their captions; where their sizes differ much, nothing is laid over. */
(function () {
  "use strict";
  Array.prototype.forEach.call(document.querySelectorAll("[data-compare]"), function (comparison) {
    var images = comparison.querySelectorAll(".comparison__pair img");
    if (images.length !== 2) { return; }
    var ratios = Array.prototype.map.call(images, function (image) {
      return image.getAttribute("width") / image.getAttribute("height");
    });
    if (Math.abs(ratios[0] / ratios[1] - 1) > 0.1) { return; }
    var words = comparison.dataset;
    var desk = document.createElement("div");
    desk.className = "comparison__desk";
    var stack = document.createElement("div");
    stack.className = "comparison__stack";
    stack.setAttribute("aria-hidden", "true");
    Array.prototype.forEach.call(images, function (image) {
      var copy = image.cloneNode(false);
      copy.alt = "";
      stack.appendChild(copy);
    });
    var label = document.createElement("label");
    label.className = "comparison__slider";
    label.appendChild(document.createTextNode(words.slider));
    var slider = document.createElement("input");
    slider.type = "range";
    slider.min = "0";
    slider.max = "100";
    slider.step = "5";
    slider.value = "50";
    label.appendChild(slider);
    var buttons = document.createElement("div");
    buttons.className = "comparison__buttons";
    buttons.setAttribute("role", "group");
    buttons.setAttribute("aria-label", words.buttons);
    var choices = [["before", 0], ["half", 50], ["after", 100]].map(function (choice) {
      var button = document.createElement("button");
      button.type = "button";
      button.className = "button";
      button.textContent = words[choice[0]];
      button.addEventListener("click", function () { show(choice[1]); });
      buttons.appendChild(button);
      return { button: button, value: choice[1] };
    });
    function show(value) {
      slider.value = String(value);
      comparison.style.setProperty("--after", value + "%");
      slider.setAttribute("aria-valuetext", words.value.replace("[n]", String(value)));
      choices.forEach(function (choice) {
        choice.button.setAttribute("aria-pressed", String(choice.value === value));
      });
    }
    slider.addEventListener("input", function () { show(Number(slider.value)); });
    desk.appendChild(stack);
    desk.appendChild(label);
    desk.appendChild(buttons);
    comparison.classList.add("comparison--live");
    comparison.insertBefore(desk, comparison.firstChild);
    show(50);
  });
}());
