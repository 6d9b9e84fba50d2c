/* Comfort at the bench: timers that ring, ticks that stay, a screen that stays on. The sheet is complete without it. Timers count to an end time, so that a page in the background does not drift. */
(function () {
  "use strict";
  var desk = document.getElementById("desk");
  if (!desk) { return; }
  var store = desk.getAttribute("data-store");
  var words = {};
  Array.prototype.forEach.call(desk.querySelectorAll("[data-word]"), function (item) {
    words[item.getAttribute("data-word")] = item.textContent;
  });
  var told = desk.querySelector(".bench-desk__status");
  var state = read();

  function read() {
    try { return JSON.parse(localStorage.getItem(store)) || {}; } catch (refused) { return {}; }
  }
  function keep() {
    try { localStorage.setItem(store, JSON.stringify(state)); } catch (refused) { told.textContent = words.lost; return false; }
    return true;
  }
  /* What another window of the same page has kept in the meantime. */
  function reread() {
    state = read();
    state.ticks = state.ticks || {};
    state.timers = state.timers || {};
  }
  /* A record belongs to the sheet in every language, but the words of each, and so its mark, are its own. */
  function begun(record, issue) {
    record.issue = issue;
    record.issues = {};
    record.issues[document.documentElement.lang] = issue;
    return record;
  }
  function changed(record, issue) {
    var language = document.documentElement.lang;
    record.issues = record.issues || begun({}, record.issue).issues;
    if (!record.issues[language]) { record.issues[language] = issue; keep(); }
    return record.issues[language] !== issue;
  }
  function fill(text, holes) {
    return text.replace(/\[([a-z]+)\]/g, function (all, name) { return name in holes ? holes[name] : all; });
  }
  function two(number) { return (number < 10 ? "0" : "") + number; }
  function clock(milliseconds) {
    var time = new Date(milliseconds);
    return two(time.getHours()) + ":" + two(time.getMinutes());
  }
  function stampText(milliseconds) {
    var day = new Date(milliseconds);
    return day.getFullYear() + "-" + two(day.getMonth() + 1) + "-" + two(day.getDate()) + " " + clock(milliseconds);
  }
  /* The day of the week of what comes within six days, else the date. */
  function dayOf(milliseconds) {
    var day = new Date(milliseconds);
    var now = new Date(Date.now());
    return day.toLocaleDateString((document.documentElement.lang + "-u-nu-latn").replace("en-", "en-GB-"), day > now && day - now < 5184e5 ? { weekday: "short" }
      : { day: "numeric", month: "short", year: day.getFullYear() === now.getFullYear() ? undefined : "numeric" });
  }
  /* The time of day, with its day if that is another one. */
  function when(milliseconds) {
    return (new Date(milliseconds).toDateString() === new Date(Date.now()).toDateString() ? "" : dayOf(milliseconds) + ", ") + clock(milliseconds);
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
  /* Where a note stands in a record: in a part of a step or, by its number, in one bath. */
  function home(one, part, bath) {
    if (!bath) { return one[part] || (one[part] = {}); }
    var list = one[part] || (one[part] = []);
    var number = { changes: "change", tests: "test", looks: "look", days: "day" }[part] || "bath";
    var found = list.filter(function (one) { return one[number] === bath; })[0];
    if (!found) { found = {}; found[number] = bath; list.push(found); }
    return found;
  }
  function valueOf(item, text) {
    var before = item.getAttribute("data-before");
    var unit = item.getAttribute("data-unit");
    return before || unit ? (before ? before + " " : "") + text.replace(",", ".") + (unit ? " " + unit : "") : text;
  }
  function hand(text, name) {
    var link = make("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = name;
    link.click();
  }
  function call(button, text, label) {
    if (button.textContent === text) { return; }
    button.textContent = text;
    if (label) { button.setAttribute("aria-label", text + ": " + label); }
  }
  function button(text, label, act) {
    var made = make("button", "button");
    made.type = "button";
    call(made, text, label);
    made.addEventListener("click", act);
    return made;
  }
  /* A second tap of a wet hand comes at once: it is none. */
  function soon(then, within) { return Math.abs(Date.now() - then) < within; }
  /* What cannot be taken back is asked for, and the second tap counts only after half a second, until when the button shows that it waits; after ten it is asked for anew. */
  function sure(button, question, needed, act, label, asked) {
    var usual = "";
    var since = 0;
    button.addEventListener("click", function () {
      if (soon(since, 500)) { return; }
      usual = button.textContent === question ? usual : button.textContent;
      if (!needed() || soon(since, 10000)) {
        since = 0;
        call(button, usual, label);
        act();
        return;
      }
      since = Date.now();
      call(button, question, label);
      if (asked) { asked(); }
      button.setAttribute("aria-disabled", "true");
      window.setTimeout(function () { button.removeAttribute("aria-disabled"); }, 500);
      window.setTimeout(function () { if (!soon(since, 9900) && button.textContent === question) { call(button, usual, label); } }, 10000);
    });
    return button;
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
  /* What the bench view adds to: it comes in a script of its own. */
  var bench = {
    state: function () { return state; }, keep: keep, words: words, fill: fill, clock: clock, when: when, dayOf: dayOf, two: two, digits: digits, make: make,
    button: button, call: call, soon: soon, sure: sure, stampText: stampText, home: home, valueOf: valueOf, hand: hand, reread: reread, store: store, begun: begun, changed: changed,
    bar: function () { return ""; }, painted: function () {}, save: function () {}, began: function () {}, ring: function () {}, cleared: function () {}
  };
  var timers = Array.prototype.map.call(document.querySelectorAll(".timer"), function (item) {
    var length = Number(item.getAttribute("data-seconds"));
    return length > 0 ? timer(item, item.getAttribute("data-timer"), length) : null;
  }).filter(Boolean);

  /* A timer has one state and a face on the sheet and in the bench view. */
  function timer(item, id, usual) {
    var label = item.querySelector(".timer__label").textContent;
    var step = item.closest(".strip__step");
    var heading = step.querySelector(".strip__kind").textContent;
    var self = {
      id: id, label: label, step: step.id, what: label + words.comma + " " + heading, item: item,
      then: item.getAttribute("data-then"), kind: item.getAttribute("data-kind"), due: Number(item.getAttribute("data-due")), mine: mine, left: left, length: length, start: start, pause: pause, snooze: snooze,
      answer: answer, stop: stop, resume: resume, over: over, spare: spare, face: face, paint: paint, usual: usual,
      tick: function () { if (mine().end) { speak(); paint(); } }
    };
    var drawn = [];
    var touched = 0;
    var status = make("p", "timer__status");
    status.setAttribute("role", "status");
    var own = make("div", "timer__face");
    face(own);
    [own, status].forEach(function (part) { item.insertBefore(part, item.querySelector(".timer__write")); });

    function face(home) {
      var run = make("div", "timer__run");
      var shown = make("span", "timer__digits");
      shown.setAttribute("role", "timer");
      shown.setAttribute("aria-label", self.what);
      var go = button(words.start, self.what, function () { toggle(); });
      var reset = sure(button(words.reset, self.what), words["reset-sure"], function () { return !!mine().began; },
        function () { clear(); paint(); }, self.what);
      var longer = button(words.longer, self.what, function () { extend(60); });
      var other = button(words.other, self.what, ask);
      var stamp = make("p", "timer__stamp");
      var minutes = null;
      [shown, go, reset, longer, other].forEach(function (part) { run.appendChild(part); });
      home.appendChild(run);
      home.appendChild(stamp);
      drawn.push(draw);
      draw();

      /* The field is made when it is wanted: browsers look at every field there is, and lay out the whole sheet for it. */
      function ask() {
        var set = make("label", "timer__set", words.length);
        minutes = make("input");
        minutes.type = "text"; minutes.inputMode = "decimal"; minutes.autocomplete = "off";
        minutes.setAttribute("aria-label", words.length + ": " + self.what);
        minutes.addEventListener("change", function () {
          var wanted = Math.min(Number(minutes.value.replace(",", ".")) * 60, usual * 10);
          if (!(wanted > 0) || mine().end || mine().left) { minutes.value = String(length() / 60); return; }
          save({ length: wanted });
          paint();
        });
        set.appendChild(minutes);
        run.replaceChild(set, other);
        paint();
        minutes.focus();
      }
      function draw() {
        var now = mine();
        var rest = left();
        shown.textContent = digits(rest < 0 ? rest : Math.ceil(rest));
        var text = now.end ? words.pause : now.began ? words["go-on"] : self.kind === "bath" ? words["sheet-in"] : words.start;
        call(go, text, self.what);
        /* At the bench few words while it runs: what is wanted less often stands on the sheet, or comes when it is paused. */
        reset.hidden = home !== own && (!now.began || now.end && !now.answered);
        go.hidden = !!now.answered;
        longer.hidden = go.hidden || home !== own && (!now.began || self.kind === "drop");
        other.hidden = home !== own;
        stamp.textContent = now.answered ? fill(words["stopped-at"], { t: when(now.began), u: when(now.answered) })
          : now.end ? fill(words[home === own ? "started-at" : "due"], { t: when(now.began), u: when(now.due || now.end) }) : "";
        if (minutes && document.activeElement !== minutes) { minutes.value = String(Math.round(length() / 6) / 10); }
      }
    }
    function mine() { return state.timers[id] || {}; }
    function save(next) { state.timers[id] = next; keep(); }
    function clear() { delete state.timers[id]; keep(); }
    function length() { return mine().length || usual; }
    function left() {
      var now = mine();
      return now.end ? (now.end - (now.answered || Date.now())) / 1000 : "left" in now ? now.left : length();
    }
    function start() {
      var now = mine();
      save({ length: length(), end: Date.now() + left() * 1000, said: now.said || 0, began: now.began || Date.now(), due: now.due });
      if (!now.said) { say(1, fill(words["say-start"], { what: label, length: digits(length()) })); }
      bench.began(self);
      paint();
    }
    function toggle() {
      var now = mine();
      if (soon(touched, 1000)) { return; }
      touched = Date.now();
      status.textContent = now.began ? status.textContent : bench.bar(self);
      if (!now.began && status.textContent) { return; }
      if (now.end) { pause(); } else { start(); }
    }
    function pause() {
      var now = mine();
      save({ length: length(), left: left(), said: now.said, began: now.began, due: now.due });
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
    /* After a ring, from now on: what ended long ago would still be over with a minute more. */
    function snooze(seconds) {
      var now = mine();
      now.due = now.due || now.end;
      now.end = Date.now() + seconds * 1000;
      delete now.answered;
      now.said = 4;
      save(now);
      paint();
    }
    /* Over before or after its time; where its step is done, it goes on as if nothing had been if that is taken back. */
    function stop(cut) {
      var now = mine();
      if (!now.began || now.answered) { return; }
      now.answered = Date.now();
      if (cut) { now.cut = 1; }
      save(now);
      paint();
    }
    function resume() {
      var now = mine();
      if (!now.cut) { return; }
      delete now.cut;
      delete now.answered;
      save(now);
      paint();
    }
    function answer() {
      stop();
      var next = timers.filter(function (one) { return one.id === self.then; })[0];
      if (next && (next === self || !next.mine().began)) {
        if (next === self) { clear(); }
        next.start();
      }
      paint();
      return next;
    }
    /* How long a step may go on at most, in seconds from now; without end where the sheet does not tell it. */
    function spare() { return self.due ? self.due - (Date.now() - mine().began) / 1000 : Infinity; }
    function spent() { return spare() < 1; }
    /* A step takes as long as its work asks for: when its least time is over, one looks whether it is done, until it must not go on. */
    function over(what) {
      var now = mine();
      return self.kind !== "whole" ? fill(words["say-end"], { what: what })
        : fill(words[spent() ? "most-over" : "whole-over"], { what: heading, n: Math.round((length() + (now.due ? now.end - now.due : 0) / 1000) / 60) });
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
      if (now.answered) { return; }
      var rest = left();
      var whole = length();
      var said = now.said || 0;
      if (rest <= 0) {
        bench.ring(self);
        if (said < 5) { say(5, over(label)); }
      } else if (rest <= 60 && said < 4 && whole > 120) { say(4, fill(words["say-one"], { what: label })); }
      else if (rest > 60 && rest <= 300 && said < 3 && whole > 600) { say(3, fill(words["say-five"], { what: label })); }
      else if (rest > 300 && rest <= whole / 2 && said < 2) { say(2, fill(words["say-half"], { what: label })); }
    }
    function paint() {
      item.classList.toggle("timer--over", left() < 0 && !mine().answered);
      drawn.forEach(function (one) { one(); });
      bench.painted();
      if (!mine().began) { status.textContent = ""; }
    }
    paint();
    return self;
  }
  bench.timers = timers;
  window.benchleaf = bench;
  window.setInterval(function () { timers.forEach(function (one) { one.tick(); }); }, 500);
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden) { timers.forEach(function (one) { one.tick(); }); }
  });

  /* The rest of the desk. */
  var wipe = desk.querySelector("[data-desk=clear]");
  var rescue = null;
  sure(wipe, words["clear-sure"], function () { return state.record; }, function () {
    if (rescue) { rescue.remove(); }
    state = { ticks: {}, timers: {} };
    try { localStorage.removeItem(store); } catch (refused) { /* nothing was kept */ }
    boxes.forEach(function (box) { box.checked = false; });
    timers.forEach(function (timer) { timer.paint(); });
    bench.cleared();
    told.textContent = words.cleared;
  }, "", function () {
    if (!words.save) { return; }
    rescue = rescue || button(words.save, words.record, function () { bench.save(); });
    wipe.parentNode.appendChild(rescue);
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
  bench.stayOn = function () { if (navigator.wakeLock && !wanted) { wanted = true; stayOn(); } };
  awake.addEventListener("click", function () {
    wanted = !wanted;
    if (wanted) { stayOn(); } else if (lock) { lock.release(); }
  });
  document.addEventListener("visibilitychange", function () {
    if (!document.hidden && wanted && !lock) { stayOn(); }
  });
  desk.hidden = false;
}());
