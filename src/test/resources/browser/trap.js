/* Notes every sign that a text of the content was run as a script; set before any script of the page. */
(function () {
  "use strict";
  var sprung = window.sprungTraps = [];
  ["alert", "confirm", "prompt", "open", "print", "eval"].forEach(function (name) {
    window[name] = function (words) { sprung.push(name + "(" + words + ")"); };
  });
  document.write = document.writeln = function (words) { sprung.push("write(" + words + ")"); };
  window.addEventListener("error", function (event) {
    sprung.push("error: " + (event.message || (event.target && event.target.outerHTML)));
  }, true);
})();
