/* Searches the index that search-index.js has put on the window. The library forgives slips; the status says how
   many were found once typing stops. */
(function () {
  "use strict";
  var form = document.querySelector("[data-search]");
  if (!form || !window.Fuse || !window.BENCHLEAF_INDEX) { return; }
  var input = form.querySelector("input");
  var status = document.querySelector("[data-search-status]");
  var list = document.querySelector("[data-search-results]");
  var words = form.dataset;
  var fuse = new window.Fuse(window.BENCHLEAF_INDEX, {
    keys: [{ name: "t", weight: 4 }, { name: "w", weight: 3 }, { name: "s", weight: 2 }, { name: "x", weight: 1 }],
    ignoreLocation: true,
    threshold: 0.3,
    minMatchCharLength: 2,
    includeScore: true
  });
  var most = 50;
  var waiting = 0;
  function item(entry) {
    var element = document.createElement("li");
    var link = document.createElement("a");
    link.href = entry.h;
    link.textContent = entry.t;
    var kind = document.createElement("span");
    kind.className = "search-form__kind";
    kind.textContent = " " + entry.k;
    var about = document.createElement("p");
    about.textContent = entry.s;
    element.appendChild(link);
    element.appendChild(kind);
    element.appendChild(about);
    return element;
  }
  function find() {
    var question = input.value.trim();
    list.textContent = "";
    list.hidden = true;
    if (question.length < 2) { status.textContent = ""; return; }
    var found = fuse.search(question.slice(0, 32)).slice(0, most);
    found.forEach(function (result) { list.appendChild(item(result.item)); });
    list.hidden = found.length === 0;
    var said = found.length === 0 ? words.nothing : found.length === 1 ? words.foundOne : words.found;
    status.textContent = said.replace("[n]", String(found.length)).replace("[q]", function () { return question; });
    try { history.replaceState(null, "", "?q=" + encodeURIComponent(question)); } catch (refused) { return; }
  }
  input.addEventListener("input", function () {
    clearTimeout(waiting);
    waiting = setTimeout(find, 350);
  });
  form.addEventListener("submit", function (event) {
    event.preventDefault();
    clearTimeout(waiting);
    find();
  });
  var asked = new URLSearchParams(location.search).get("q");
  if (asked) { input.value = asked; find(); }
}());
