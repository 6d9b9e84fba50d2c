/* The record of a class: what one station writes down is kept on this device as it is typed, saved as one file a station,
   and read from such a file again. The form itself stands in the page and is filled in on paper as well. */
(function () {
  "use strict";
  var bench = window.benchleaf;
  var form = document.getElementById("record");
  if (!bench || !form) { return; }
  var words = bench.words;
  var fields = all("[name]", form);
  var told = form.querySelector(".record__told");
  var ask = form.querySelector(".record__ask");
  var unkept = false;

  function all(what, home) { return Array.prototype.slice.call(home.querySelectorAll(what)); }
  function part(name) { return form.querySelector("[data-record=" + name + "]"); }
  function record() {
    var state = bench.state();
    return state.record || (state.record = bench.begun({ at: "", stations: {} }, form.getAttribute("data-sheet")));
  }
  /* Each window shows its own station; the last one chosen is shown again after a reload. Until one is chosen nothing can be
     written, for it would belong to none. */
  var here = record().at || "0";
  function station() { return here; }
  function entries() { return record().stations[station()] || (record().stations[station()] = {}); }
  /* What could not be kept is only here, so it is not read again from the store until it is kept. */
  function change(act) {
    if (!unkept) { bench.reread(); }
    act();
    unkept = !bench.keep();
    told.textContent = unkept ? words.lost : "";
  }

  /* Fields. */
  fields.forEach(function (field) {
    field.addEventListener("input", function () {
      change(function () {
        if (field.value) { entries()[field.name] = field.value; } else { delete entries()[field.name]; }
      });
      look(field);
    });
    if (field.type === "datetime-local") {
      field.closest(".record__field").appendChild(bench.button(words.now, field.getAttribute("aria-label"), function () {
        field.value = bench.stampText(Date.now()).replace(" ", "T");
        field.dispatchEvent(new Event("input"));
      }));
    }
  });
  /* A field without a value prints empty, and one with a long text prints it all. */
  function look(field) {
    field.closest(".record__field").classList.toggle("record__field--blank", !field.value);
    if (field.localName === "textarea") {
      var lines = field.value.split("\n").reduce(function (sum, line) { return sum + 1 + Math.floor(line.length / 32); }, 0);
      field.rows = Math.max(field.defaultRows || (field.defaultRows = field.rows), lines);
    }
  }
  function paint() {
    var codes = [];
    all("[data-station]", form).forEach(function (choice) {
      var mine = choice.getAttribute("data-station") === station();
      choice.setAttribute("aria-pressed", String(mine));
      if (mine) { codes = choice.parentNode.getAttribute("data-codes").split("|"); }
    });
    form.querySelector(".record__station").textContent = station() === "0" ? "" : bench.fill(words.station, { n: station() });
    fields.forEach(function (field) {
      field.value = field.name === "station" ? (station() === "0" ? "" : station()) : entries()[field.name] || "";
      field.readOnly = field.name === "station";
      field.disabled = station() === "0";
      if (field.hasAttribute("data-place")) { field.placeholder = codes[Number(field.getAttribute("data-place")) - 1] || ""; }
      look(field);
    });
  }
  function choose(number) {
    change(function () { here = record().at = number; });
    ask.textContent = "";
    paint();
  }
  all("[data-station]", form).forEach(function (choice) {
    choice.addEventListener("click", function () { choose(choice.getAttribute("data-station")); });
  });
  function fromAddress() {
    var wanted = /^#station-(\d+)$/.exec(location.hash);
    if (wanted && form.querySelector("[data-station='" + wanted[1] + "']")) { choose(wanted[1]); return true; }
    return false;
  }
  window.addEventListener("hashchange", fromAddress);

  /* The file, in the form that record.schema.json describes; what was not written down is not there. */
  function whole(mine) {
    var out = { "case": form.getAttribute("data-case"), sheet: record().issue, "class": form.getAttribute("data-class") };
    if (form.getAttribute("data-issue")) { out.issue = Number(form.getAttribute("data-issue")); }
    out.station = Number(station());
    if (mine.trainees) { out.trainees = mine.trainees; }
    out.written = bench.stampText(Date.now());
    out.steps = [];
    out.outcomes = [];
    fields.forEach(function (field) {
      if (mine[field.name]) { put(out, field, mine[field.name]); }
    });
    out.outcomes.forEach(function (mark) {
      var field = form.querySelector("[name='" + mark.at + "/trainee']");
      if (!mark.trainee && field.placeholder) { mark.trainee = field.placeholder; }
      mark.at = field.closest(".record__mark").getAttribute("data-step");
    });
    if (!out.outcomes.length) { delete out.outcomes; }
    return out;
  }
  function put(out, field, text) {
    var at = field.name.split("/");
    if (at.length < 4) { return; }
    if (at[0] === "mark") {
      var mark = member(out.outcomes, "at", at.slice(0, 3).join("/"));
      mark.will = field.closest(".record__mark").getAttribute("data-will");
      mark[at[3]] = field.hasAttribute("data-number") ? Number(text.replace(",", ".")) : text;
      return;
    }
    var step = member(out.steps, "step", at[0]);
    var home = at[1] ? bench.home(step, at[1], Number(at[2])) : step;
    home[at[3]] = field.type === "datetime-local" ? text.replace("T", " ") : measured(field, text);
    if (at[1] === "released") { home.role = field.closest("[data-role]").getAttribute("data-role"); }
  }
  /* The unit is added to a bare number; what else was written stays as it is. */
  function measured(field, text) {
    return field.hasAttribute("data-unit") && /^[\d.,±\s-]+$/.test(text) ? bench.valueOf(field, text.trim()) : text;
  }
  function member(list, key, value) {
    var found = list.filter(function (one) { return one[key] === value; })[0];
    if (!found) { found = {}; found[key] = value; list.push(found); }
    return found;
  }
  part("save").addEventListener("click", function () {
    if (station() === "0") { told.textContent = words["no-station"]; return; }
    bench.hand(JSON.stringify(whole(entries()), null, 2) + "\n",
      form.getAttribute("data-class") + "-station-" + station() + "-record.json");
    told.textContent = words.saved;
  });
  part("print").addEventListener("click", function () { window.print(); });

  /* Reading a file back: nothing that stands here is replaced before somebody says so. */
  part("open").addEventListener("change", function () {
    var file = part("open").files[0];
    if (!file) { return; }
    var reader = new FileReader();
    reader.addEventListener("load", function () {
      var read = null;
      try { read = JSON.parse(reader.result); } catch (broken) { /* told below */ }
      part("open").value = "";
      if (!read || !Array.isArray(read.steps) || read["class"] !== form.getAttribute("data-class")
        || !form.querySelector("[data-station='" + Number(read.station) + "']")) {
        told.textContent = bench.fill(words["not-this-class"], { name: file.name });
        return;
      }
      offer(read);
    });
    reader.addEventListener("error", function () { told.textContent = bench.fill(words["not-read"], { name: file.name }); });
    reader.readAsText(file);
  });
  function offer(read) {
    choose(String(Number(read.station)));
    var incoming = {};
    fields.forEach(function (field) {
      var text = found(read, field);
      if (text) { incoming[field.name] = text; }
    });
    var over = leaves([read.steps, read.outcomes || []]) - leaves([whole(incoming).steps, whole(incoming).outcomes || []]);
    var differ = Object.keys(entries()).filter(function (name) { return entries()[name] !== incoming[name]; });
    var rest = over > 0 ? " " + bench.fill(words["no-place"], { n: over }) : "";
    if (!differ.length) { take(incoming, rest); return; }
    told.textContent = bench.fill(words["stands-here"], { n: differ.length }) + rest;
    ask.textContent = "";
    ask.appendChild(bench.button(words.replace, bench.fill(words.station, { n: station() }), function () { take(incoming, rest); }));
    ask.appendChild(bench.button(words["keep-both"], bench.fill(words.station, { n: station() }), function () {
      var mine = entries();
      take(Object.assign({}, incoming, mine), rest);
    }));
  }
  function take(incoming, rest) {
    change(function () { record().stations[station()] = incoming; });
    ask.textContent = "";
    paint();
    told.textContent = (unkept ? words.lost : words.opened) + rest;
  }
  function found(read, field) {
    var at = field.name.split("/");
    if (at.length < 4) { return field.readOnly || read[field.name] === undefined ? "" : String(read[field.name]); }
    var one = at[0] === "mark" ? marked(read, field, Number(at[2])) : (read.steps.filter(function (step) { return step.step === at[0]; })[0] || {});
    var home = at[0] === "mark" || !at[1] ? one : !Number(at[2]) ? one[at[1]] || {}
      : (one[at[1]] || []).filter(function (reading) { return Number(at[1] === "changes" ? reading.change : reading.bath) === Number(at[2]); })[0] || {};
    var text = home[at[3]] === undefined ? "" : String(home[at[3]]);
    return field.type === "datetime-local" ? text.replace(" ", "T") : bare(field, text);
  }
  function marked(read, field, place) {
    var mine = field.closest(".record__mark");
    return (read.outcomes || []).filter(function (mark) {
      return mark.at === mine.getAttribute("data-step") && mark.will === mine.getAttribute("data-will");
    })[place - 1] || {};
  }
  function bare(field, text) {
    var before = field.getAttribute("data-before");
    var unit = field.getAttribute("data-unit");
    var rest = before && text.indexOf(before + " ") === 0 ? text.slice(before.length + 1) : text;
    rest = unit && rest.slice(-unit.length - 1) === " " + unit ? rest.slice(0, -unit.length - 1) : rest;
    return field.hasAttribute("data-unit") && measured(field, rest) === text ? rest : text;
  }
  function leaves(part) {
    return part !== null && typeof part === "object"
      ? Object.keys(part).reduce(function (sum, key) { return sum + leaves(part[key]); }, 0) : 1;
  }

  /* Opening. */
  window.addEventListener("storage", function (event) {
    if (event.key === bench.store && !unkept) { bench.reread(); paint(); }
  });
  window.addEventListener("beforeunload", function (event) {
    if (unkept) { event.preventDefault(); event.returnValue = words.lost; }
  });
  bench.cleared = function () { unkept = false; ask.textContent = ""; paint(); };
  form.querySelector(".record__desk").hidden = false;
  if (bench.changed(record(), form.getAttribute("data-sheet"))) { told.textContent = words.changed; }
  if (!fromAddress()) { paint(); }
}());
