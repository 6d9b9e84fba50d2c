/* Sums that follow the bench: an input of a working is changed in the sheet, and every figure that follows from it is
   marked with what it is now. Loaded when it is asked for; what was changed is kept for this case while the tab is open. */
(function () {
  "use strict";
  var bar = document.querySelector(".bench-sums");
  var sums = window.benchleafSums;
  var store = window.benchleafChanges;
  var words = {};
  Array.prototype.forEach.call(bar.querySelectorAll("[data-word]"), function (item) { words[item.dataset.word] = item.textContent; });
  var status = bar.querySelector(".bench-sums__status");
  var changes = kept();
  var asked = 0;
  function kept() {
    try { return JSON.parse(sessionStorage.getItem(store)) || []; } catch (refused) { return []; }
  }
  function keep() {
    try {
      if (changes.length) { sessionStorage.setItem(store, JSON.stringify(changes)); } else { sessionStorage.removeItem(store); }
    } catch (refused) { /* the page itself still has them */ }
  }
  function element(name, kind, text) {
    var made = document.createElement(name);
    if (kind) { made.className = kind; }
    made.textContent = text || "";
    return made;
  }
  function plain(text) {
    return text.replace(/(\d)\u202F(?=\d{3})/g, "$1").replace(/[\u202F\u00A0]/g, " ").replace(/\s+/g, " ").trim();
  }
  function each(selector, act) { Array.prototype.forEach.call(document.querySelectorAll(selector), act); }
  function working(figure) { return document.querySelector("details.working[data-figure='" + figure + "']"); }
  function ready() {
    return sums.calculations().then(function (calculator) {
      return window.BENCHLEAF_FIGURES ? calculator : sums.script(bar.dataset.figures).then(function () { return calculator; });
    });
  }
  /* The inputs of a working that are not another figure of this page become fields, with the way back beside them. */
  function open(details) {
    var figure = details.dataset.figure;
    if (!details.querySelector("[data-sums='own']")) {
      details.querySelector(".working__title").appendChild(wayBack(details.querySelector(".working__label").textContent));
    }
    given(figure).forEach(function (one) {
      if (one.row.querySelector("input")) { return; }
      one.row.cells[1].appendChild(field(figure, one)).setAttribute("aria-label", one.label + ": " + details.querySelector(".working__label").textContent);
    });
  }
  /* What was put into a figure and is not another figure of this page, with what stands there now. */
  function given(figure) {
    return Array.prototype.filter.call(document.querySelectorAll("details.working[data-figure='" + figure + "'] .working__given tbody tr"), function (row) {
      return !row.cells[2].querySelector("a[href^='#working-']");
    }).map(function (row) {
      var label = row.cells[0].textContent;
      var own = plain(row.cells[1].textContent);
      var before = changes.filter(function (one) { return one[1] === label && one[3] === own && one[0].split(".")[0] === figure.split(".")[0]; })[0];
      return { row: row, label: label, own: own, now: before ? before[2] : own };
    });
  }
  function field(figure, one) {
    var made = element("input", "bench-sums__field");
    made.type = "text";
    made.autocomplete = "off";
    made.spellcheck = false;
    made.value = one.now;
    made.dataset.own = one.own;
    made.dataset.put = figure.split(".")[0] + one.label;
    made.addEventListener("change", function () {
      var text = plain(made.value);
      var bare = /^[\d.,]+$/.test(text) && /[^\d.,]/.test(one.own);
      if (made.nextSibling) { made.nextSibling.remove(); }
      /* A number without its unit is not guessed at. */
      if (bare) { made.after(element("span", "bench-sums__note", words.unit.replace("[one]", text + one.own.replace(/^[\d.,\s]+/, " ")))); }
      else { change(figure, one.label, one.own, text); }
    });
    return made;
  }
  /* The same fields at the bench, under the amount that follows from them; of a tray its length, width and depth. */
  window.benchleafFields = function (home) {
    if (home.querySelector("input")) { return; }
    var figure = home.querySelector("[data-figure]").dataset.figure;
    var fields = home.appendChild(element("div", "screen__fields"));
    given(figure).forEach(function (one) {
      if (/tray/.test(figure) && !/^[^0].*[cm]m$/.test(one.own)) { return; }
      fields.appendChild(element("label", "", one.label)).appendChild(field(figure, one));
    });
  };
  function wayBack(of) {
    var button = bar.querySelector("[data-sums='own']").cloneNode(true);
    button.classList.add("bench-sums__back");
    button.setAttribute("aria-label", button.textContent + ": " + of);
    button.addEventListener("click", back);
    return button;
  }
  function change(figure, label, own, text) {
    var group = figure.split(".")[0];
    changes = changes.filter(function (one) { return one[0].split(".")[0] !== group || one[1] !== label || one[3] !== own; });
    if (text && text !== own) { changes.push([figure, label, text, own]); }
    keep();
    each(".bench-sums__field", function (field) {
      if (field.dataset.put === group + label && field.dataset.own === own) { field.value = text || own; }
    });
    work();
  }
  function back() {
    changes = [];
    keep();
    each(".bench-sums__field", function (field) { field.value = field.dataset.own; });
    work();
  }
  function clear() {
    each(".bench-sums__note, .screen .bench-sums__back", function (part) { part.remove(); });
    each(".bench-sums__old", function (old) { old.classList.remove("bench-sums__old"); });
  }
  function work() {
    var turn = asked += 1;
    if (!changes.length) {
      clear();
      bar.hidden = true;
      return;
    }
    bar.hidden = false;
    status.textContent = words.loading;
    clear();
    warn();
    ready().then(function (calculator) {
      if (turn !== asked) { return; }
      var lines;
      try {
        lines = calculator.follow(window.BENCHLEAF_FIGURES.chain, changes.map(function (one) {
          return one.slice(0, 3).join("\t").replace(/\n/g, " ");
        }).join("\n"));
      } catch (unfit) {
        back();
        bar.hidden = false;
        status.textContent = words.unfit;
        return;
      }
      clear();
      status.textContent = "";
      told(lines.split("\n").map(function (line) { return line.split("\t"); }));
    }, function () {
      status.textContent = words.missing;
    });
  }
  function told(lines) {
    var list = bar.querySelector(".bench-sums__changes");
    var results = [];
    lines.forEach(function (cells) {
      if (cells[0] === "number" || cells[0] === "none") {
        results.push({ figure: cells[1], now: cells[2] + (cells[3] ? "\u202F" + cells[3] : ""), failed: cells[0] === "none", by: [], notes: [] });
      } else { results[results.length - 1][cells[0] === "by" ? "by" : "notes"].push(cells[1]); }
    });
    list.textContent = "";
    warn(results);
    results.forEach(function (result) {
      var details = working(result.figure);
      var was = details && details.querySelector(".working__number").textContent.replace(/\s+/g, " ").trim();
      if (plain(result.now) === plain(was || "") && !result.notes.length) { return; }
      var text = said(result, was);
      if (details) { list.appendChild(element("li", "", details.querySelector(".working__label").textContent + ": " + result.short)); }
      mark(result, details, text);
    });
  }
  function said(result, was) {
    var by = words.comma + " " + words["with"] + " " + result.by.join(words.comma + " ");
    result.short = (result.failed ? words["not-worked-out"] + " (" + result.now + ")"
      : result.now + (was ? " " + words.instead + " " + was : "")) + by;
    return (result.failed ? "" : words.changed + ": ") + result.short;
  }
  function mark(result, details, text) {
    if (details) {
      details.querySelector(".working__number").classList.add("bench-sums__old");
      details.querySelector(".working__summary").appendChild(element("span", "bench-sums__note", text));
      result.notes.forEach(function (note) { details.querySelector(".working__body").appendChild(element("p", "bench-sums__note", note)); });
      each("a.number[href='#" + details.querySelector(".working__body").id + "']", function (link) { beside(link, text); });
    }
    each("span[data-figure='" + result.figure + "']", function (amount) {
      amount.classList.add("bench-sums__old");
      var screen = amount.closest(".screen");
      if (screen) { (amount.closest("details") || amount).after(wayBack(screen.querySelector(".screen__name").textContent)); }
      beside(amount, text + (/tray-volume$/.test(result.figure) ? carrier(result.figure.split(".")[0]) : ""));
    });
  }
  /* The cautions of a step, its mark and its drawing hold for the sheet's own values: what was changed is told where the hand is. */
  function warn(results) {
    each(".strip__step", function (step) {
      var mine = changes.filter(function (one) { return step.dataset.follows.split(" ").indexOf(one[0].split(".")[0]) >= 0; });
      if (!mine.length) { return; }
      var text = words.step.replace("[what]", mine.map(function (one) {
        return one[1] + " " + one[2] + " " + words.instead + " " + one[3];
      }).join(words.comma + " ")) + (mine.some(hazardous) ? " " + words.hazard : "") + (mine.some(ofTray) ? takes(mine, results || []) + carrier(mine.filter(ofTray)[0][0].split(".")[0]) + " " + words.tray : "");
      each("#" + step.id + " .strip__do, .screen[data-screen='" + step.id + "']:not(.screen--hold) .screen__time:first-of-type", function (place) {
        place.parentNode.insertBefore(element("p", "bench-sums__note", text), place);
      });
    });
  }
  /* What one bath takes in the tray that was put in, filled as deep as the sheet or the reader says. */
  function takes(mine, results) {
    var volume = results.filter(function (one) {
      return !one.failed && mine.some(function (change) { return ofTray(change) && one.figure === change[0].split(".")[0] + ".tray-volume"; });
    })[0];
    return volume ? " " + words["tray-takes"].replace("[volume]", volume.now) : "";
  }
  /* The carrier lies flat in the tray, or the tray is not used. */
  function carrier(step) {
    var cut = ["height", "width"].map(function (side) { return working(step + ".carrier-" + side); });
    if (!cut[0] || !cut[1] || !working(step + ".tray-volume")) { return ""; }
    var needed = cut.map(function (one) { return plain(one.querySelector(".working__number").textContent); });
    var sides = given(step + ".tray-volume").slice(0, 2).map(function (one) { return length(one.now); }).sort(down);
    return needed.map(length).sort(down).some(function (side, index) { return sides[index] < side; })
      ? " " + words.carrier.replace("[sides]", needed.join(" × ")) : "";
  }
  function length(text) { return parseFloat(text.replace(",", ".")) * (/\dcm$|\scm$/.test(text) ? 10 : /[\s\d]m$/.test(text) ? 1000 : 1); }
  function down(one, other) { return other - one; }
  function hazardous(one) { return /% [vwm]|pH|°C|mol/.test(one[3]); }
  function ofTray(one) { return /\.(tray-|record-)?(volume|total)$/.test(one[0]) && /[cm]m$/.test(one[3]); }
  function beside(place, text) { place.parentNode.insertBefore(element("span", "bench-sums__note", text), place.nextSibling); }
  each("details.screen__amount[open]", window.benchleafFields);
  bar.querySelector("[data-sums='own']").addEventListener("click", back);
  document.addEventListener("click", function (event) {
    var button = event.target.closest ? event.target.closest("[data-sums='change']") : null;
    if (button) {
      open(button.closest("details"));
      button.closest("details").querySelector(".bench-sums__field").focus();
    }
  });
  work();
}());
