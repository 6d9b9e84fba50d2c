/* Opens the working that a number in the text points at, and closes it again. Without this, browsers that know how
   open it themselves; the others show the link's place. */
(function () {
  "use strict";
  document.addEventListener("click", function (event) {
    var link = event.target.closest ? event.target.closest("a.number") : null;
    if (!link) { return; }
    var target = document.getElementById(decodeURIComponent(link.hash.slice(1)));
    var details = target && target.closest("details");
    if (!details) { return; }
    event.preventDefault();
    details.open = !details.open;
    if (details.open) {
      openAround(details);
      details.querySelector("summary").focus();
    }
  });
  /* A working may stand in a part that is closed itself. */
  function openAround(element) {
    for (var part = element.closest("details"); part; part = part.parentElement.closest("details")) { part.open = true; }
  }
  function openTarget() {
    var target = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
    if (target && target.closest("details")) {
      openAround(target);
      target.scrollIntoView();
    }
  }
  /* A working that opens links to the form of its sum, with what was put in. The way there is that of the foot. */
  var sums = document.querySelector(".foot__ways a[href$='sums.html']");
  document.addEventListener("toggle", function (event) {
    var title = event.target.open && sums && event.target.querySelector(".working__title--sum");
    var method = title && title.querySelector("a[href*='#method-']");
    if (!method || title.querySelector(".working__sum")) { return; }
    var root = sums.href.slice(0, -"sums.html".length);
    var anchor = event.target.querySelector(".working__body").id;
    var hash = ["sum-" + method.hash.slice("#method-".length),
      "from=" + encodeURIComponent(location.href.split("#")[0].slice(root.length) + "#" + anchor)];
    Array.prototype.forEach.call(event.target.querySelectorAll(".working__given tbody tr"), function (row) {
      hash.push(encodeURIComponent(row.cells[0].textContent) + "=" + encodeURIComponent(row.cells[1].textContent));
    });
    var link = document.createElement("a");
    link.className = "working__sum";
    link.href = sums.href + "#" + hash.join("&");
    link.textContent = sums.textContent;
    title.appendChild(link);
  }, true);
  window.addEventListener("hashchange", openTarget);
  openTarget();
  /* An open working may be worked again with other values. The script for it is loaded when it is asked for, or where
     something of this case was changed before. */
  var changed = document.querySelector(".bench-sums");
  var here = document.currentScript.src.replace(/[^/]*$/, "");
  function load(names, then) {
    if (!names.length) { return then(); }
    var script = document.createElement("script");
    script.onload = function () { load(names.slice(1), then); };
    script.src = here + names[0];
    document.head.appendChild(script);
  }
  function sumsAtTheBench(then) {
    if (window.benchleafChanges) { return; }
    window.benchleafChanges = "benchleaf.changes." + location.pathname.replace(/[^/]*$/, "");
    load(["calculator.js", "bench-sums.js"], then);
  }
  if (changed && here) {
    document.addEventListener("toggle", function (event) {
      if (event.target.open && event.target.matches(".screen__amount")) {
        if (window.benchleafFields) { window.benchleafFields(event.target); } else { sumsAtTheBench(function () {}); }
      }
      var title = event.target.open && event.target.matches(".working") && event.target.querySelector(".working__title--sum");
      if (!title || title.querySelector("[data-sums]")) { return; }
      var button = document.createElement("button");
      button.type = "button";
      button.className = "button";
      button.dataset.sums = "change";
      button.textContent = changed.querySelector("[data-word='change']").textContent;
      button.setAttribute("aria-label", button.textContent + ": " + event.target.querySelector(".working__label").textContent);
      button.addEventListener("click", function () { sumsAtTheBench(function () { button.click(); }); });
      title.appendChild(button);
    }, true);
    try {
      if (sessionStorage.getItem("benchleaf.changes." + location.pathname.replace(/[^/]*$/, ""))) { sumsAtTheBench(function () {}); }
    } catch (refused) { /* nothing is kept in this browser */ }
  }
  /* A word of the glossary opens beside itself, and the reader stays: its sentences lie in a file beside the glossary. Where that
     cannot be read, the link leads to the glossary. */
  var glossary = null;
  function meaning(link) {
    var anchor = decodeURIComponent(link.hash.slice(1));
    var sentences = (glossary || []).filter(function (one) { return one[0] === anchor && /[.!?\u061f]$/.test(one[1]); }).slice(0, 2);
    if (!sentences.length) { location.assign(link.href); return; }
    var note = document.createElement("span");
    note.className = "term__meaning";
    note.textContent = " (" + sentences.map(function (one) { return one[1]; }).join(" ");
    var way = document.querySelector(".foot__ways a[href$='glossary.html']");
    if (way) {
      var more = document.createElement("a");
      more.href = link.href;
      more.textContent = way.textContent;
      note.append(" ", more);
    }
    note.append(")");
    link.after(note);
    link.setAttribute("aria-expanded", "true");
  }
  document.addEventListener("click", function (event) {
    var link = event.target.closest ? event.target.closest("a.term") : null;
    if (!link || event.ctrlKey || event.metaKey || event.shiftKey || event.altKey) { return; }
    event.preventDefault();
    var open = link.nextElementSibling;
    if (open && open.className === "term__meaning") {
      open.remove();
      link.setAttribute("aria-expanded", "false");
      return;
    }
    if (glossary) { meaning(link); return; }
    var script = document.createElement("script"), before = window.BENCHLEAF_SENTENCES;
    window.BENCHLEAF_SENTENCES = function (path, sentences) { glossary = sentences; };
    script.onload = script.onerror = function () {
      window.BENCHLEAF_SENTENCES = before;
      meaning(link);
    };
    script.src = link.href.replace(/\.html#.*$/, "-sentences.js");
    document.head.appendChild(script);
  });
  /* Engines that do not know ::details-content would print closed workings closed. */
  var closed = [];
  window.addEventListener("beforeprint", function () {
    closed = Array.prototype.slice.call(document.querySelectorAll("details:not([open])"));
    closed.forEach(function (details) { details.open = true; });
  });
  window.addEventListener("afterprint", function () {
    closed.forEach(function (details) { details.open = false; });
    closed = [];
  });
}());
