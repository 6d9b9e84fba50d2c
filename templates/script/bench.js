/* Comfort at the bench: timers, ticks that stay, one step at a time, a screen that stays on. The sheet is complete
   without it. Timers count to an end time, so that a page in the background does not drift. */
(function () {
  "use strict";
  var desk = document.getElementById("desk");
  if (!desk) { return; }
  var store = desk.getAttribute("data-store");
  var words = {};
  Array.prototype.forEach.call(desk.querySelectorAll("[data-word]"), function (item) {
    words[item.getAttribute("data-word")] = item.textContent;
  });
  var state = read();

  function read() {
    try { return JSON.parse(localStorage.getItem(store)) || {}; } catch (refused) { return {}; }
  }
  function keep() {
    try { localStorage.setItem(store, JSON.stringify(state)); } catch (refused) { /* a private window keeps nothing */ }
  }
  function fill(text, holes) {
    return text.replace(/\[([a-z]+)\]/g, function (all, name) { return name in holes ? holes[name] : all; });
  }
  function two(number) { return (number < 10 ? "0" : "") + number; }
  function clock(milliseconds) {
    var time = new Date(milliseconds);
    return two(time.getHours()) + ":" + two(time.getMinutes());
  }
  function digits(seconds) {
    var whole = Math.floor(Math.abs(seconds));
    var hours = Math.floor(whole / 3600);
    var rest = two(Math.floor(whole / 60) % 60) + ":" + two(whole % 60);
    return (seconds < 0 ? "+" : "") + (hours ? hours + ":" + rest : rest);
  }
  function make(name, className, text) {
    var element = document.createElement(name);
    if (className) { element.className = className; }
    if (text) { element.textContent = text; }
    return element;
  }
  function button(text, label, act) {
    var made = make("button", "button", text);
    made.type = "button";
    made.setAttribute("aria-label", text + ": " + label);
    made.addEventListener("click", act);
    return made;
  }

  /* Ticks. */
  var boxes = Array.prototype.slice.call(document.querySelectorAll(".tick input"));
  state.ticks = state.ticks || {};
  boxes.forEach(function (box) {
    box.checked = !!state.ticks[box.id];
    box.addEventListener("change", function () {
      if (box.checked) { state.ticks[box.id] = 1; } else { delete state.ticks[box.id]; }
      keep();
    });
  });

  /* Timers. */
  state.timers = state.timers || {};
  var timers = Array.prototype.map.call(document.querySelectorAll(".timer"), function (item) {
    var length = Number(item.getAttribute("data-seconds"));
    return length > 0 ? timer(item, item.getAttribute("data-timer"), length) : null;
  }).filter(Boolean);

  function timer(item, id, usual) {
    var label = item.querySelector(".timer__label").textContent;
    var run = make("div", "timer__run");
    var shown = make("span", "timer__digits");
    shown.setAttribute("role", "timer");
    shown.setAttribute("aria-label", label);
    var start = button(words.start, label, toggle);
    var reset = button(words.reset, label, function () { clear(); paint(); });
    var longer = button(words.longer, label, function () { extend(60); });
    var other = button(words.other, label, ask);
    var minutes = null;
    [shown, start, reset, longer, other].forEach(function (part) { run.appendChild(part); });
    var stamp = make("p", "timer__stamp");
    var status = make("p", "timer__status");
    status.setAttribute("role", "status");
    [run, stamp, status].forEach(function (part) { item.insertBefore(part, item.querySelector(".timer__write")); });

    /* The field is made when it is wanted: browsers look at every field there is, and lay out the whole sheet for it. */
    function ask() {
      var set = make("label", "timer__set", words.length);
      minutes = make("input");
      minutes.type = "number"; minutes.min = "0.5"; minutes.step = "0.5"; minutes.max = String(usual / 6);
      minutes.setAttribute("aria-label", words.length + ": " + label);
      minutes.addEventListener("change", function () {
        var wanted = Math.min(Number(minutes.value) * 60, usual * 10);
        if (!(wanted > 0) || mine().end || mine().left) { minutes.value = String(length() / 60); return; }
        save({ length: wanted });
        paint();
      });
      set.appendChild(minutes);
      run.replaceChild(set, other);
      paint();
      minutes.focus();
    }
    function mine() { return state.timers[id] || {}; }
    function save(next) { state.timers[id] = next; keep(); }
    function clear() { delete state.timers[id]; keep(); }
    function length() { return mine().length || usual; }
    function left() {
      var now = mine();
      return now.end ? (now.end - Date.now()) / 1000 : "left" in now ? now.left : length();
    }
    function toggle() {
      var now = mine();
      if (now.end) {
        save({ length: length(), left: left(), said: now.said, began: now.began });
      } else {
        save({ length: length(), end: Date.now() + left() * 1000, said: now.said || 0, began: now.began || Date.now() });
        if (!now.said) { say(1, fill(words["say-start"], { what: label, length: digits(length()) })); }
      }
      paint();
    }
    function extend(seconds) {
      var now = mine();
      var most = usual * 10;
      var longerNow = Math.min(length() + seconds, most);
      var more = longerNow - length();
      if (more <= 0) { return; }
      now.length = longerNow;
      if (now.end) { now.end += more * 1000; } else if ("left" in now) { now.left += more; }
      save(now);
      paint();
    }
    /* Each message is spoken once: start, half, five minutes, one minute, end. */
    function say(mark, text) {
      var now = mine();
      now.said = mark;
      save(now);
      status.textContent = text;
    }
    function speak() {
      var now = mine();
      if (!now.end) { return; }
      var rest = left();
      var whole = length();
      var said = now.said || 0;
      if (rest <= 0 && said < 5) { say(5, fill(words["say-end"], { what: label })); }
      else if (rest > 0 && rest <= 60 && said < 4 && whole > 120) { say(4, fill(words["say-one"], { what: label })); }
      else if (rest > 60 && rest <= 300 && said < 3 && whole > 600) { say(3, fill(words["say-five"], { what: label })); }
      else if (rest > 300 && rest <= whole / 2 && said < 2) { say(2, fill(words["say-half"], { what: label })); }
    }
    function paint() {
      var now = mine();
      var rest = left();
      shown.textContent = digits(rest < 0 ? rest : Math.ceil(rest));
      item.classList.toggle("timer--over", rest < 0);
      var text = now.end ? words.pause : now.began ? words["go-on"] : words.start;
      if (start.textContent !== text) {
        start.textContent = text;
        start.setAttribute("aria-label", text + ": " + label);
      }
      stamp.textContent = now.began && now.end
        ? fill(words["started-at"], { t: clock(now.began), u: clock(now.end) }) : "";
      if (minutes && document.activeElement !== minutes) { minutes.value = String(Math.round(length() / 6) / 10); }
      if (!now.began) { status.textContent = ""; }
    }
    paint();
    return { tick: function () { if (mine().end) { speak(); paint(); } }, paint: paint };
  }
  window.setInterval(function () { timers.forEach(function (one) { one.tick(); }); }, 500);
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden) { timers.forEach(function (one) { one.tick(); }); }
  });

  /* One step at a time. */
  var steps = Array.prototype.slice.call(document.querySelectorAll(".strip__step"));
  var strip = document.querySelector(".strip");
  var one = desk.querySelector("[data-desk=one]");
  var resume = desk.querySelector("[data-desk=resume]");
  var ways = make("nav", "strip-ways");
  ways.setAttribute("aria-label", words.one);
  var previous = button(words.previous, words.one, function () { go(at() - 1); });
  var next = button(words.next, words.one, function () { go(at() + 1); });
  var where = make("p");
  where.setAttribute("role", "status");
  previous.removeAttribute("aria-label");
  next.removeAttribute("aria-label");
  [previous, where, next].forEach(function (part) { ways.appendChild(part); });
  ways.hidden = true;
  strip.parentNode.insertBefore(ways, strip.nextSibling);

  function at() { return Math.min(Math.max(state.step || 0, 0), steps.length - 1); }
  function mark() {
    steps.forEach(function (step, index) { step.classList.toggle("strip__step--now", index === at()); });
    previous.disabled = at() === 0;
    next.disabled = at() === steps.length - 1;
    where.textContent = fill(words["step-of"], { n: at() + 1, m: steps.length });
  }
  function go(index) {
    state.step = Math.min(Math.max(index, 0), steps.length - 1);
    keep();
    mark();
    steps[at()].setAttribute("tabindex", "-1");
    steps[at()].focus({ preventScroll: true });
    steps[at()].scrollIntoView();
  }
  function single(on) {
    document.body.classList.toggle("bench-one", on);
    one.setAttribute("aria-pressed", String(on));
    ways.hidden = !on;
    mark();
  }
  one.addEventListener("click", function () {
    var on = !document.body.classList.contains("bench-one");
    single(on);
    if (on) { go(at()); }
  });
  if (state.step > 0) {
    resume.hidden = false;
    resume.textContent = fill(words.resume, { n: at() + 1 });
    resume.addEventListener("click", function () { single(true); go(at()); });
  }
  /* A link to a step must arrive even where only one is shown. */
  window.addEventListener("hashchange", function () {
    var index = steps.indexOf(document.getElementById(location.hash.slice(1)));
    if (index >= 0 && document.body.classList.contains("bench-one")) { go(index); }
  });

  /* The rest of the desk. */
  var told = desk.querySelector(".bench-desk__status");
  desk.querySelector("[data-desk=clear]").addEventListener("click", function () {
    state = { ticks: {}, timers: {} };
    try { localStorage.removeItem(store); } catch (refused) { /* nothing was kept */ }
    boxes.forEach(function (box) { box.checked = false; });
    timers.forEach(function (timer) { timer.paint(); });
    single(false);
    resume.hidden = true;
    told.textContent = words.cleared;
  });
  /* A browser lets go of the screen when its page is left, so it is asked again when the reader comes back. */
  var awake = desk.querySelector("[data-desk=awake]");
  var lock = null;
  var wanted = false;
  function tellAwake(on, text) {
    awake.setAttribute("aria-pressed", String(on));
    told.textContent = text;
  }
  function stayOn() {
    navigator.wakeLock.request("screen").then(function (granted) {
      if (!wanted) { granted.release(); return; }
      lock = granted;
      tellAwake(true, words["awake-on"]);
      lock.addEventListener("release", function () {
        lock = null;
        tellAwake(false, words["awake-off"]);
      });
    }, function () {
      wanted = false;
      tellAwake(false, words["awake-no"]);
    });
  }
  awake.hidden = !navigator.wakeLock;
  awake.addEventListener("click", function () {
    wanted = !wanted;
    if (wanted) { stayOn(); } else if (lock) { lock.release(); }
  });
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden && wanted && !lock) { stayOn(); }
  });
  desk.hidden = false;
}());
