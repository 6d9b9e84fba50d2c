/* Lets the site be installed and kept on the device, where it is served by a server that a browser trusts for that. From a
   folder, or where it cannot be, nothing happens and nothing is said. */
(function () {
  "use strict";
  var script = document.currentScript && document.currentScript.src;
  if (!script || !/^https?:$/.test(location.protocol)) { return; }
  var root = new URL("../", script).href;
  var manifest = document.createElement("link");
  manifest.rel = "manifest";
  manifest.href = root + "manifest.webmanifest";
  document.head.appendChild(manifest);
  if (!("serviceWorker" in navigator)) { return; }

  var box = document.querySelector("[data-kept]");
  function word(key) { return box.querySelector("[data-word=\"" + key + "\"]").textContent; }
  function filled(key, holes) {
    return Object.keys(holes).reduce(function (text, hole) { return text.replace("[" + hole + "]", holes[hole]); }, word(key));
  }
  function day(on) {
    var parts = on.split("-").map(Number);
    return filled("month-" + parts[1], { d: parts[2], y: parts[0] });
  }
  function say(part, text) {
    var place = box.querySelector("[data-kept-" + part + "]");
    place.textContent = text;
    place.hidden = !text;
    box.hidden = false;
  }

  function ask(worker) {
    return new Promise(function (done) {
      if (!worker) { done(null); return; }
      var channel = new MessageChannel();
      channel.port1.onmessage = function (event) { done(event.data); };
      worker.postMessage("kept", [channel.port2]);
    });
  }

  function titles(list, other, differs) {
    return list.filter(function (one) {
      var same = other.filter(function (each) { return each.id === one.id; })[0];
      return differs(one, same);
    }).map(function (one) { return one.title; });
  }

  function news(next, now) {
    var parts = [];
    function part(key, names) { if (names.length) { parts.push(filled(key, { cases: names.join(word("comma") + " ") })); } }
    part("new", titles(next.cases, now.cases, function (one, same) { return !same; }));
    part("changed", titles(next.cases, now.cases, function (one, same) { return same && same.mark !== one.mark; }));
    part("gone", titles(now.cases, next.cases, function (one, same) { return !same; }));
    return [filled("ready", { day: day(next.on) })].concat(parts, word("leave")).join(" ");
  }

  function state(now) {
    if (!now) { say("state", word("fetching")); return; }
    var kept = now.cases.filter(function (one) { return one.kept; }).length;
    say("state", filled("kept", { n: kept, all: now.cases.length, day: day(now.on) }));
  }

  /* Where a case was taken down, the new edition is to begin at once. A browser waits for that until the worker of the edition
     before has nothing to do, and makes haste only with one that runs at the moment it is asked: so the one before is asked first. */
  function show(registration) {
    var waiting = registration.waiting;
    ask(waiting).then(function (next) {
      ask(registration.active).then(function (now) {
        if (next && next.urgent) { waiting.postMessage("begin"); }
        if (!box) { return; }
        state(now);
        if (now) { say("news", next && registration.waiting === waiting ? news(next, now) : ""); }
      });
    });
  }

  function watch(registration) {
    function follow(worker) { if (worker) { worker.addEventListener("statechange", function () { show(registration); }); } }
    follow(registration.installing);
    follow(registration.waiting);
    registration.addEventListener("updatefound", function () { follow(registration.installing); });
    show(registration);
    registration.update().catch(function () { /* no line: what is kept stands */ });
  }

  navigator.serviceWorker.register(root + "sw.js", { scope: root, updateViaCache: "none" }).then(watch, function () {
    /* The device does not allow it, or this is a copy that is not kept: the site is read from its server. */
  });
}());
