/* Hides the rows of the evidence that lack a value chosen, in the drawing and in its table, and tells how many are left. */
(function () {
  "use strict";
  var form = document.querySelector("[data-evidence-filter]");
  if (!form) { return; }
  var choices = Array.from(form.querySelectorAll("select"));
  var status = form.querySelector("[data-evidence-status]");

  function of(row) { return row.querySelector("a").getAttribute("href"); }

  function show() {
    var wanted = choices.map(function (choice) { return choice.value; }).filter(Boolean);
    var shown = 0, rows = 0;
    document.querySelectorAll(".evidence-plot").forEach(function (plot) {
      var hidden = new Set();
      plot.querySelectorAll("[data-has]").forEach(function (row) {
        var has = row.dataset.has.split(" ");
        row.hidden = !wanted.every(function (value) { return has.includes(value); });
        if (row.hidden) { hidden.add(of(row)); }
        rows += 1;
        shown += row.hidden ? 0 : 1;
      });
      plot.querySelectorAll("tbody tr").forEach(function (row) { row.hidden = hidden.has(of(row)); });
    });
    status.textContent = wanted.length ? form.dataset.shown.replace("[n]", shown).replace("[m]", rows) : "";
  }

  form.addEventListener("submit", function (event) { event.preventDefault(); });
  choices.forEach(function (choice) { choice.addEventListener("change", show); });
  show();
}());
