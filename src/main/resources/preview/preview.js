/* The preview in an open page: loads the page again when it has changed, at the same place, and shows what is told of it. */
(function () {
  "use strict";
  var script = new URL(document.currentScript.src);
  var root = new URL("../../", script);
  var page = decodeURIComponent(location.pathname.slice(root.pathname.length));
  var kept = "benchleaf-preview " + page;
  var source = null;
  var coming = null;

  function all(what) { return Array.prototype.slice.call(document.querySelectorAll(what)); }
  function make(name, parent, text) {
    var made = document.createElement(name);
    if (text) { made.textContent = text; }
    parent.appendChild(made);
    return made;
  }

  /* The strip has a tree and a style of its own, so that it neither follows those of the page nor changes them. */
  var home = make("div", document.body);
  home.id = "benchleaf-preview";
  home.style.cssText = "position: sticky; bottom: 0; z-index: 9999";
  var tree = home.attachShadow({ mode: "open" });
  var style = make("link", tree);
  style.rel = "stylesheet";
  style.href = new URL("preview.css", script).href;
  var strip = make("details", tree);
  var sum = make("summary", strip, "Preview");
  sum.setAttribute("aria-live", "polite");
  var list = make("ul", strip);

  function count(kind, one, many) {
    var number = coming.filter(function (each) { return each.kind === kind; }).length;
    return number ? number + " " + (number === 1 ? one : many) : "";
  }
  function show() {
    var notices = coming.filter(function (each) { return each.kind === "notice"; }).map(function (each) { return each.text; });
    var counts = [count("error", "error", "errors"), count("warning", "warning", "warnings"),
      count("advice", "advice", "pieces of advice")].filter(Boolean);
    var text = ["Preview: " + (counts.join(", ") || "no messages")].concat(notices).join(". ");
    if (sum.textContent !== text) { sum.textContent = text; }
    list.textContent = "";
    coming.filter(function (each) { return each.kind !== "notice"; }).forEach(function (each) {
      make("li", list, each.text).className = each.kind;
    });
    home.setAttribute("data-told", counts.join(", "));
  }
  function hear(name, work) { source.addEventListener(name, function (event) { work(event.data); }); }
  function take(kind) { return function (text) { coming.push({ kind: kind, text: text }); }; }
  function listen() {
    source = new EventSource(new URL("events?page=" + encodeURIComponent(page) + "&version="
      + script.searchParams.get("version"), root));
    hear("page", reload);
    hear("begin", function () { coming = []; });
    hear("notice", take("notice"));
    ["error", "warning", "advice"].forEach(function (kind) { hear("told-" + kind, take(kind)); });
    hear("end", show);
    source.onerror = function () { sum.textContent = "Preview: it does not answer. It may have been stopped."; };
  }

  /* The place in the page, told from the part that is seen first, since what stands above it may have changed. */
  function seen() {
    return all("main [id]").filter(function (part) { return part.getBoundingClientRect().bottom > 0; })[0];
  }
  function nameOf(part) {
    var near = part.closest("[id]");
    return (near ? near.id : "") + "|" + part.querySelector("summary").textContent.trim();
  }
  function reload() {
    var first = seen();
    source.close();
    sessionStorage.setItem(kept, JSON.stringify({ y: window.scrollY, id: first ? first.id : "",
      top: first ? first.getBoundingClientRect().top : 0, open: all("main details[open]").map(nameOf), strip: strip.open,
      focus: document.activeElement && document.activeElement.id }));
    location.reload();
  }
  function restore() {
    var before = JSON.parse(sessionStorage.getItem(kept) || "null");
    if (!before) { return; }
    sessionStorage.removeItem(kept);
    history.scrollRestoration = "manual";
    strip.open = before.strip;
    all("main details").forEach(function (part) { if (before.open.indexOf(nameOf(part)) >= 0) { part.open = true; } });
    var focus = before.focus && document.getElementById(before.focus);
    if (focus) { focus.focus({ preventScroll: true }); }
    place(before);
    /* Once more when pictures and styles are there. */
    window.addEventListener("load", function () { place(before); });
  }
  function place(before) {
    var first = before.id && document.getElementById(before.id);
    window.scrollTo({ top: first ? window.scrollY + first.getBoundingClientRect().top - before.top : before.y, behavior: "instant" });
  }

  /* A browser opens few lines to one server at a time: a page that nobody sees leaves its own to the others. */
  function follow() {
    if (source) { source.close(); source = null; }
    if (document.visibilityState === "visible") { listen(); }
  }
  document.addEventListener("visibilitychange", follow);
  window.addEventListener("pagehide", function () { if (source) { source.close(); } });
  window.addEventListener("pageshow", function (event) { if (event.persisted) { follow(); } });
  restore();
  follow();
}());
