/* Works the sums of this page. */
(function () {
  "use strict";
  var calculations = window.benchleafSums.calculations;
  function element(name, kind, text) {
    var made = document.createElement(name);
    if (kind) { made.className = kind; }
    made.textContent = text || "";
    return made;
  }
  /* A number that names no unit is meant in the one that is chosen beside it, and so is each of a list. */
  function put(form, field) {
    var text = field.value.trim();
    var unit = form.querySelector("[data-unit='" + field.name + "']");
    if (!text || !unit || /[^\d\s.,;+–±٠-٩٫،؛-]/.test(text.replace(/\bto\b|\d[eE][+-]?\d/g, ""))) { return text; }
    return text.split(/[;؛،]\s*|,\s+|,(?!\d)/).map(function (one) { return one.trim() + " " + unit.value; }).join(", ");
  }
  function inputs(form) {
    return Array.prototype.filter.call(form.elements, function (field) { return field.name && field.value.trim(); })
      .map(function (field) { return field.name + "\t" + put(form, field).replace(/[\t\n]/g, " "); }).join("\n");
  }
  function pair(list, name, value) {
    var row = document.createElement("div");
    row.appendChild(element("dt", "", name));
    var cell = element("dd", "", "");
    cell.appendChild(element("bdi", "", value));
    row.appendChild(cell);
    list.appendChild(row);
  }
  function show(sum, lines) {
    var answer = sum.querySelector(".sum__answer");
    var numbers = element("dl", "sum__numbers", "");
    var given = element("dl", "sum__numbers sum__note", "");
    var notes = [];
    var refused = false;
    lines.forEach(function (line) {
      var cells = line.split("\t");
      if (cells[0] === "number") { pair(numbers, cells[2], cells[3] + (cells[4] ? "\u202F" + cells[4] : "")); }
      if (cells[0] === "word") { pair(numbers, cells[2], cells[3]); }
      if (cells[0] === "withheld") { pair(numbers, cells[2], sum.dataset.noValue + ": " + cells[3]); }
      if (cells[0] === "given") { pair(given, cells[1], cells[2] + " (" + cells[3] + ")"); }
      if (cells[0] === "note") { notes.push(element("p", "sum__note", cells[1])); }
      if (cells[0] === "refused") { refused = true; notes.push(element("p", "", cells[2])); }
    });
    answer.textContent = "";
    answer.classList.toggle("sum__answer--refused", refused);
    var own = sum.querySelector(".sum__own");
    var changed = own && sum.querySelector(".sum__was:not(:empty)");
    answer.classList.toggle("sum__answer--changed", Boolean(changed));
    answer.appendChild(element("p", "sum__title", refused ? sum.dataset.refused : sum.dataset.result));
    if (own) { answer.appendChild(element("p", changed ? "sum__was" : "sum__note", changed ? sum.dataset.changed : sum.dataset.asSheet)); }
    if (numbers.firstChild) { answer.appendChild(numbers); }
    notes.forEach(function (note) { answer.appendChild(note); });
    if (given.firstChild) {
      answer.appendChild(element("p", "sum__title", sum.dataset.putIn));
      answer.appendChild(given);
    }
  }
  function work(sum) {
    var answer = sum.querySelector(".sum__answer");
    answer.textContent = sum.dataset.loading;
    calculations().then(function (calculator) {
      show(sum, calculator.work(sum.dataset.sum, inputs(sum.querySelector("form"))).split("\n"));
    }, function () { answer.textContent = sum.dataset.missing; });
  }
  function decoded(text) {
    try { return decodeURIComponent(text); } catch (malformed) { return text; }
  }
  /* Puts a text of the sheet in a field: its unit in the choice beside it, where that has it. */
  function fill(form, field, text) {
    var unit = form.querySelector("[data-unit='" + field.name + "']");
    var units = unit ? Array.prototype.map.call(unit.options, function (one) { return one.value; }) : [];
    var own = units.filter(function (one) { return text.slice(-one.length - 1) === " " + one; })
      .sort(function (a, b) { return b.length - a.length; })[0];
    var several = /[,;،] /.test(text);
    if (own && !several) { unit.value = own; }
    field.value = own && !several ? text.slice(0, -own.length - 1) : text;
  }
  /* What the calculation calls a word that readers of the page know by another. */
  function chosen(field, text) {
    return Array.prototype.reduce.call(field.options || [], function (found, one) {
      return one.textContent === text ? one.value : found;
    }, text);
  }
  /* A working of a sheet links here with what was put in; that is worked at once, and what is changed then is marked. */
  function fromSheet() {
    var asked = location.hash.slice(1).split("&");
    var section = document.getElementById(asked[0]);
    var sum = section && section.querySelector("[data-sum]");
    if (!sum || asked.length < 3) { return; }
    var form = sum.querySelector("form");
    var labels = {};
    Array.prototype.forEach.call(form.querySelectorAll("label"), function (label) { labels[label.textContent] = label.htmlFor; });
    var own = {};
    /* An input that the sheet calls by another name, such as the length of a tray, stands in its place. */
    var places = Object.keys(labels);
    asked.slice(2).forEach(function (pair, place) {
      var cut = pair.split("=").map(decoded);
      var field = document.getElementById(labels[cut[0]] || labels[places[place]] || "");
      if (field) { own[field.name] = chosen(field, cut[1].replace(/(\d)\u202F(?=\d{3})/g, "$1").replace(/[\u202F\u00A0]/g, " ")); }
    });
    var names = Object.keys(own);
    function reset() {
      names.forEach(function (name) { fill(form, form.elements.namedItem(name), own[name]); });
      mark();
      work(sum);
    }
    function mark() {
      names.forEach(function (name) {
        var same = put(form, form.elements.namedItem(name)) === own[name];
        form.querySelector("[data-was='" + name + "']").textContent = same ? "" : sum.dataset.onSheet + ": " + own[name];
      });
    }
    var bar = sum.querySelector(".sum__own") || element("p", "sum__own", "");
    bar.textContent = "";
    var button = element("button", "button", sum.dataset.own);
    button.type = "button";
    button.addEventListener("click", reset);
    bar.appendChild(button);
    var from = decoded(asked[1].slice("from=".length));
    if (/^[\w-]+(\/[\w-]+)*\.html#[\w-]+$/.test(from)) {
      var back = element("a", "sum__back", sum.dataset.back);
      back.href = from;
      bar.appendChild(back);
    }
    form.parentNode.insertBefore(bar, form);
    form.addEventListener("change", function () { mark(); work(sum); });
    form.addEventListener("submit", mark);
    section.scrollIntoView();
    reset();
  }
  Array.prototype.forEach.call(document.querySelectorAll("[data-sum]"), function (sum) {
    var form = sum.querySelector("form");
    form.hidden = false;
    form.addEventListener("submit", function (event) {
      event.preventDefault();
      work(sum);
    });
  });
  window.addEventListener("hashchange", fromSheet);
  fromSheet();
}());
