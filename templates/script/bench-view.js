/* The bench view: one action a screen, a ring that is heard, seen and felt, the times of the day, and the record. It
   shows what the page already holds and keeps what is written on this device alone. */
(function () {
  "use strict";
  var bench = window.benchleaf;
  var view = document.getElementById("bench");
  if (!bench || !view) { return; }
  var words = bench.words;
  var fill = bench.fill;
  var make = bench.make;
  var screens = all(".screen", view);
  var middle = view.querySelector(".bench__screens");
  var said = view.querySelector(".bench__said");
  var strip = view.querySelector(".bench__due");
  var back = part("back");
  var next = part("next");
  var closes = view.getAttribute("data-closes").split(":");
  var stages = all("[data-stage]", view).map(function (item) {
    return { anchor: item.getAttribute("data-stage"), id: item.getAttribute("data-step"),
      least: Number(item.getAttribute("data-least")) * 1000, after: item.getAttribute("data-after").split(" ").filter(Boolean),
      wait: Number(item.getAttribute("data-wait")) * 1000,
      name: item.querySelector("span").textContent, when: item.querySelector(".screen__when"),
      open: item.querySelector("button"), until: make("b") };
  });
  var phone = window.matchMedia("(max-width: 40rem), (max-height: 26rem)");
  var read = document.getElementById("tick-briefing");

  function all(what, home) { return Array.prototype.slice.call((home || document).querySelectorAll(what)); }
  function part(name) { return view.querySelector("[data-bench=" + name + "]"); }
  function state() { return bench.state(); }
  function record() { return state().record || (state().record = bench.begun({ steps: {} }, view.getAttribute("data-issue"))); }
  function noted(anchor) { return (state().record && state().record.steps[anchor]) || {}; }
  function note(anchor) { return record().steps[anchor] || (record().steps[anchor] = {}); }
  function anchorOf(screen) { return screen.getAttribute("data-screen"); }
  function nameOf(screen) { return screen.querySelector(".screen__name").textContent.replace(/\s+/g, " "); }

  /* Screens. */
  function at() { return Math.min(Math.max(state().at || 0, 0), screens.length - 1); }
  function shut(screen) { return screen.classList.contains("screen--hold") && !noted(anchorOf(screen)).released; }
  function way(button, index, words1, words2) {
    button.textContent = words1;
    button.setAttribute("aria-disabled", String(!screens[index]));
    button.setAttribute("aria-label", screens[index] ? fill(words2, { name: nameOf(screens[index]) }) : words1);
  }
  function show() {
    screens.forEach(function (screen, index) { screen.hidden = index !== at(); });
    way(back, at() - 1, words.back, words["back-to"]);
    way(next, at() + 1, words.next, words["next-to"]);
    if (shut(screens[at()])) { next.setAttribute("aria-disabled", "true"); }
    if (anchorOf(screens[at()]) === "record") { view.querySelector(".screen__record").textContent = written(); }
    times();
  }
  function go(index, quiet) {
    if (!screens[index]) { return; }
    if (index === at() + 1 && shut(screens[at()])) { tell(words["hold-shut"]); return; }
    state().at = index;
    bench.keep();
    show();
    middle.scrollTop = 0;
    said.classList.add("bench__said--unseen");
    said.style.cssText = "";
    said.textContent = quiet ? "" : fill(words.at, { name: nameOf(screens[index]) });
    if (!view.contains(document.activeElement)) { middle.focus({ preventScroll: true }); }
  }
  /* Where one stands is heard only, for it is seen already. */
  function tell(text, act) {
    said.classList.remove("bench__said--unseen");
    said.style.cssText = "";
    said.textContent = text;
    if (act) { said.append(" ", bench.button(words["go-on"], text, function () { hush(said); act(); })); }
  }
  /* What is said no longer leaves its place empty: nothing moves under a finger. */
  function hush(line, text) {
    if (!line.classList.contains("bench__said--unseen") && line.offsetHeight) { line.style.cssText = "display:block;min-block-size:" + line.offsetHeight + "px"; }
    line.textContent = text || "";
  }
  function first(anchor) {
    return screens.indexOf(screens.filter(function (screen) { return anchorOf(screen) === anchor; })[0]);
  }
  /* A step is not reached past a hold point of what comes before it; where that is not said, of all that stands before it. */
  function barred(anchor, seen) {
    var index = stages.findIndex(function (stage) { return stage.anchor === anchor; });
    var before = stages[index].after.filter(Boolean);
    if (!before.length) { before = stages.slice(0, index).map(function (stage) { return stage.anchor; }); }
    var found = -1;
    before.forEach(function (one) {
      if (found >= 0 || seen.indexOf(one) >= 0) { return; }
      seen.push(one);
      found = barred(one, seen);
      if (found < 0 && shut(screens[first(one)])) { found = first(one); }
    });
    return found;
  }
  function to(anchor, move) {
    var hold = barred(anchor, [anchor]);
    move(hold < 0 ? first(anchor) : hold);
    /* Who comes to a step past others that are not done is asked as they come. */
    var why = hold >= 0 ? words["hold-shut"] : noted(anchor).ended || shut(screens[first(anchor)]) ? "" : twice(anchor);
    if (why) { tell(why, hold < 0 && function () { }); }
  }
  function stageOf(anchor) {
    return stages.filter(function (stage) { return stage.anchor === anchor; })[0];
  }
  function doing(anchor) {
    return screens.filter(function (screen) { return anchorOf(screen) === anchor && screen.querySelector(".screen__time"); })[0];
  }
  function enter(index) {
    view.hidden = false;
    document.body.classList.add("at-bench");
    state().sheet = 0;
    go(index, true);
    window.scrollTo(0, 0);
    middle.focus({ preventScroll: true });
  }
  function leave() {
    var anchor = anchorOf(screens[at()]);
    var step = document.getElementById(anchor) || document.getElementById("steps");
    var face = screens[at()].querySelector("[data-face]");
    document.body.classList.remove("at-bench");
    view.hidden = true;
    state().sheet = 1;
    bench.keep();
    var place = (face && document.querySelector("[data-timer='" + face.getAttribute("data-face") + "']")) || step;
    step.setAttribute("tabindex", "-1");
    step.focus({ preventScroll: true });
    place.scrollIntoView();
  }
  back.addEventListener("click", function () { go(at() - 1); });
  next.addEventListener("click", function () { go(at() + 1); });
  part("steps").addEventListener("click", function () { go(0); });
  part("sheet").addEventListener("click", leave);
  part("record").addEventListener("click", function () { go(screens.length - 1); });
  stages.forEach(function (stage) { stage.open.addEventListener("click", function () { to(stage.anchor, go); }); });
  /* Nobody begins who has not read the briefing and ticked that off: the way in leads to its beginning and says why. */
  function briefed() {
    if (read.checked) { return true; }
    var head = read.closest("section").querySelector("h2");
    var why = head.parentNode.querySelector("[role=alert]") || make("p", "strip__hold-word", words["briefing-first"]);
    why.setAttribute("role", "alert");
    head.after(why);
    head.tabIndex = -1;
    head.focus({ preventScroll: true });
    head.scrollIntoView();
    read.addEventListener("change", function () { why.remove(); });
    return false;
  }
  document.querySelector("[data-desk=bench]").addEventListener("click", function () { if (briefed()) { bench.stayOn(); enter(at()); } });
  all(".strip__step").forEach(function (step) {
    /* At the head, and after the action where no timer has its own. */
    [".strip__clock"].concat(step.querySelector(".timer") ? [] : ".strip__action").forEach(function (place) {
      var made = bench.button(words.bench, step.querySelector(".strip__kind").textContent, function () {
        if (!briefed()) { return; }
        bench.stayOn();
        if (anchorOf(screens[at()]) === step.id) { enter(at()); } else { to(step.id, enter); }
      });
      made.classList.add("strip__bench");
      step.querySelector(place).appendChild(made);
    });
  });
  /* From a clock on the sheet to the screen that shows the same clock. */
  bench.timers.forEach(function (timer) {
    timer.item.appendChild(bench.button(words.bench, timer.what, function () {
      if (!briefed()) { return; }
      var hold = barred(timer.step, [timer.step]);
      hold = hold < 0 && shut(screens[first(timer.step)]) ? first(timer.step) : hold;
      bench.stayOn();
      enter(hold < 0 ? screenOf(timer) : hold);
      if (hold >= 0) { tell(words["hold-shut"]); }
    })).classList.add("strip__bench");
  });
  /* What opens is heard with the name of its screen. */
  screens.forEach(function (screen) {
    all(":is(.screen__more, .screen__write, .screen__drawings) > summary", screen).forEach(function (summary) {
      summary.setAttribute("aria-label", summary.textContent + ": " + nameOf(screen));
    });
  });
  /* The drawings are the step's own, under ids of their own. */
  all(".screen__drawings").forEach(function (home) {
    var step = document.getElementById(anchorOf(home.closest(".screen")));
    var row = step && step.querySelector(".drawing-row");
    if (!row) { home.remove(); return; }
    var copy = row.cloneNode(true);
    all("[id]", copy).forEach(function (part) { part.id = "bench-" + part.id; });
    all("svg", copy).forEach(function (drawing) {
      drawing.setAttribute("aria-labelledby", drawing.getAttribute("aria-labelledby").replace(/\S+/g, "bench-$&"));
    });
    home.appendChild(copy);
  });

  /* The cautions are those of the step on the sheet, without links: a wet glove must not leave the bench by a slip. */
  all(".screen__care", view).forEach(function (details) {
    details.addEventListener("toggle", function () {
      if (details.children.length > 1) { return; }
      all(".strip__action > .cautions, .strip__care > :not(summary)", document.getElementById(anchorOf(details.closest(".screen")))).forEach(function (part) {
        var copy = part.cloneNode(true);
        all("a", copy).forEach(function (link) { link.replaceWith(link.textContent); });
        details.appendChild(copy);
      });
    });
  });

  /* An amount opens to what it was worked out from: another tray is put in where it stands. */
  all("p.screen__amount", view).forEach(function (line) {
    var amount = line.querySelector("[data-figure]");
    if (!amount || !document.querySelector(".bench-sums") || !document.querySelector("details.working[data-figure='" + amount.dataset.figure + "']")) { return; }
    var open = make("details", line.className);
    var head = open.appendChild(make("summary"));
    head.append.apply(head, line.childNodes);
    line.replaceWith(open);
  });

  /* The time area of each screen: a timer, begin, done. */
  screens.forEach(function (screen) {
    var home = null;
    var anchor = anchorOf(screen);
    all(".screen__time", screen).forEach(function (each) {
      var timer = bench.timers.filter(function (one) { return one.id === each.getAttribute("data-face"); })[0];
      if (timer) {
        if (!home) { each.appendChild(make("span", "screen__promise screen__past", words.promise)); }
        timer.face(each);
      } else if (doing(anchor) === screen) {
        each.appendChild(stamp(anchor, "began", words.begin, words.began));
      }
      home = each;
    });
    if (!home) { return; }
    if (screen.hasAttribute("data-last")) { home.appendChild(stageOf(anchor).until); }
    if (screen.hasAttribute("data-last") || screen.hasAttribute("data-enough")) { home.appendChild(screen.hasAttribute("data-enough") ? stamp(anchor, "ended", words["no-bath"], words.ended, leadOn)
      : stamp(anchor, "ended", words.end, words.ended)); }
  });
  function stamps() { all("button", view).forEach(function (made) { if (made.stampOf) { made.stampOf(); } }); }
  /* The day began with the first step that was begun, if nobody says otherwise. */
  function begun(anchor) {
    if (state().started || !noted(anchor).began) { return; }
    state().started = noted(anchor).began;
    bench.keep();
    started.value = bench.clock(state().started);
  }
  function mark(anchor, key, on) {
    if (on) { note(anchor)[key] = Date.now(); } else { delete note(anchor)[key]; }
    if (key === "ended") {
      bench.timers.forEach(function (timer) {
        if (timer.step === anchor) { if (on) { timer.stop(true); } else { timer.resume(); } }
      });
    }
    if (key === "began") { hush(said); } else { ticked(anchor, on); }
    bench.keep();
    stamps();
    begun(anchor);
    times();
  }
  /* What is done is ticked off on the sheet too. */
  function ticked(anchor, on) {
    var box = all("#" + anchor + " .tick input").pop();
    if (!box || box.checked === !!on) { return; }
    box.checked = !!on;
    box.dispatchEvent(new Event("change"));
  }
  /* One tap writes the time down, another takes it back. */
  function stamp(anchor, key, before, after, then) {
    var step = stageOf(anchor).name;
    var touched = 0;
    var made = bench.button(before, step, function () {
      if (bench.soon(touched, 1000)) { return; }
      touched = Date.now();
      var why = noted(anchor).ended ? "" : key === "began" ? twice(anchor) : unripe(anchor);
      if (why) { tell(why, act); } else { act(); }
    });
    function act() {
      mark(anchor, key, !noted(anchor)[key]);
      if (then) { then(anchor); }
    }
    made.stampOf = paint;
    function paint() {
      var time = noted(anchor)[key];
      made.textContent = time ? fill(after, { t: bench.when(time) }) : before;
      made.setAttribute("aria-label", made.textContent + ": " + step);
      made.setAttribute("aria-pressed", String(!!time));
    }
    paint();
    return made;
  }
  /* The sheet's own timers wait for the briefing and the hold points as the screens do. */
  bench.bar = function (timer) {
    var hold = barred(timer.step, [timer.step]);
    hold = hold < 0 && shut(screens[first(timer.step)]) ? first(timer.step) : hold;
    var text = !read.checked ? words["briefing-first"]
      : hold < 0 ? "" : fill(words["hold-before"], { name: stageOf(anchorOf(screens[hold])).name });
    var why = text || twice(timer.step);
    if (why) { tell(why, !text && timer.start); }
    return why;
  };
  function once(key) {
    var keys = state().asked || (state().asked = {});
    if (keys[key]) { return false; }
    keys[key] = 1;
    return bench.keep() || true;
  }
  /* What is marked as done, comes past what is not, or before its day, begins only when that is asked for twice. */
  function twice(anchor) {
    var over = noted(anchor).ended;
    var stage = stageOf(anchor);
    var early = stage.wait && stage.soonest > Date.now() ? stage.name + words.comma + " " + fill(words.earliest, { t: bench.when(stage.soonest) }) + ". " : "";
    if (over ? asked === over : noted(anchor).began || !early && !undone(anchor).length || !once(anchor)) { return ""; }
    if (over) { asked = over; }
    return over ? fill(words["done-sure"], { t: bench.when(over) }) : (undone(anchor).length ? open(anchor) + " " : "") + early + words["begin-sure"];
  }
  /* What takes longer than a day at the bench has its day; before that it is marked as done only when that is asked for twice. */
  function ripe(stage) {
    var began = noted(stage.anchor).began;
    return began && stage.least > 36e6 && !noted(stage.anchor).ended ? began + stage.least : 0;
  }
  function unripe(anchor) {
    var day = ripe(stageOf(anchor));
    return day > Date.now() && once("end-" + anchor) ? fill(words["ends-at"], { what: stageOf(anchor).name, t: bench.when(day) }) + ". " + words["end-sure"] : "";
  }
  function until(day) { return fill(words["ends-at"], { what: "", t: bench.when(day) }).trim(); }
  var asked = 0;
  bench.began = function (timer) {
    if (!noted(timer.step).began) {
      note(timer.step).began = Date.now();
      bench.keep();
    }
    begun(timer.step);
    hush(said);
    middle.scrollTop = 0;
    if (awaken() && !state().heard) {
      sound(1);
      state().heard = 1;
      bench.keep();
      tell(words["ring-test"]);
    }
    times();
  };

  /* Hold points. */
  function undone(anchor) {
    var index = stages.findIndex(function (stage) { return stage.anchor === anchor; });
    return stages.slice(0, index).filter(function (stage) { return !noted(stage.anchor).ended; });
  }
  /* Three in a row are told as from the first to the last; where a clock still runs, when it is due. */
  function open(anchor) {
    var runs = [];
    undone(anchor).forEach(function (stage) {
      var last = runs[runs.length - 1];
      var one = { from: parseFloat(stage.name), to: parseFloat(stage.name), due: bench.timers.filter(function (timer) {
        return timer.step === stage.anchor && timer.mine().end && !timer.mine().answered;
      }).map(function (timer) { return " (" + fill(words.due, { u: bench.when(timer.mine().end) }) + ")"; })[0] || "" };
      if (last && !last.due && !one.due && last.to + 1 === one.to) { last.to = one.to; } else { runs.push(one); }
    });
    return fill(words["hold-undone"], { what: runs.map(function (run) {
      return run.from + (run.to > run.from ? (run.to > run.from + 1 ? "–" : ", ") + run.to : "") + run.due;
    }).join(", ") });
  }
  /* When a step ended: as it was marked, or when its time ran out, if that was before. */
  function ending(anchor) {
    var timer = bench.timers.filter(function (timer) { return timer.step === anchor && timer.kind === "whole"; })[0];
    var ran = timer && timer.mine().end < Date.now() ? timer.mine().end : Infinity;
    return Math.min(noted(anchor).ended || Infinity, ran);
  }
  /* How long the sheet may wait here, by the clock, from the end of what was done last before. */
  function latest(screen, stage) {
    var ended = stage.after.map(ending).filter(isFinite);
    return ended.length ? Math.max.apply(null, ended) + Number(screen.getAttribute("data-most")) * 1000 : 0;
  }
  /* What waits too long rings once, like a timer; how it was stays on the screen. */
  function tooLong(screen, stage) {
    var by = latest(screen, stage);
    var until = screen.querySelector(".screen__latest");
    var free = noted(stage.anchor).released || noted(stage.anchor).began && { at: noted(stage.anchor).began };
    var over = by && (free ? free.at : Date.now()) > by;
    until.textContent = by ? fill(words[over ? "hold-over" : "hold-latest"], { t: bench.when(by) }) : "";
    until = ringing.filter(function (one) { return one.id === "hold-" + stage.anchor; })[0];
    if (over && !free && state()["hold-" + stage.anchor] !== by) {
      bench.ring(until || { id: "hold-" + stage.anchor, what: nameOf(screen), said: fill(words["waits-long"], { name: stage.name }),
        step: stage.anchor, mine: function () { return { end: by }; }, snooze: function () { seen(stage, by); } });
    } else if (until) { quiet(until); }
    return over && !free;
  }
  /* When the last change of blotters falls at the earliest if the work goes on now; only where drying begins within four hours. */
  function lastChange(index) {
    var ends = {};
    for (var k = index; k < stages.length; k++) {
      var before = stages[k].after.map(function (anchor) { return ends[anchor]; }).filter(Boolean);
      var begin = k === index ? Date.now() : Math.max.apply(null, before);
      var dries = bench.timers.filter(function (timer) { return timer.step === stages[k].anchor && timer.kind === "change"; });
      if (begin > 0 && dries.length) {
        return begin - Date.now() > 14400000 ? 0 : dries.reduce(function (sum, timer) { return sum + timer.length() * 1000; }, begin);
      }
      ends[stages[k].anchor] = begin > 0 && begin + stages[k].least;
    }
    return 0;
  }
  function tooShort(screen, stage, index) {
    var line = screen.querySelector(".screen__day");
    var last = noted(stage.anchor).began ? 0 : lastChange(index);
    line.textContent = last && late(last, last) ? fill(words["last-change"], { t: bench.when(last) }) : "";
    line.hidden = !line.textContent;
  }
  function seen(stage, by) {
    state()["hold-" + stage.anchor] = by;
    bench.keep();
  }
  all(".screen__release", view).forEach(function (home) {
    var screen = home.closest(".screen");
    var anchor = anchorOf(screen);
    var who = home.querySelector("input");
    var told = screen.querySelector(".screen__told");
    var free = home.querySelector("button");
    var usual = free.textContent;
    var touched = 0;
    free.setAttribute("aria-label", usual + ": " + nameOf(screen));
    bench.sure(free, words.again, function () { return noted(anchor).released || who.value.trim() && undone(anchor).length; }, function () {
      var by = who.value.trim();
      if (bench.soon(touched, 1000)) { released(); return; }
      if (!by && !noted(anchor).released) { told.textContent = words["hold-initials"]; who.focus(); return; }
      touched = Date.now();
      who.value = "";
      delete initials()[anchor];
      if (noted(anchor).released) { delete note(anchor).released; }
      else { note(anchor).released = { by: by, role: home.getAttribute("data-role"), at: Date.now() }; }
      bench.keep();
      released();
      tell("");
      show();
    }, nameOf(screen), function () { if (!noted(anchor).released) { hush(said); once(anchor); told.textContent = open(anchor); } });
    who.value = initials()[anchor] || "";
    who.addEventListener("input", function () { initials()[anchor] = who.value; bench.keep(); });
    who.addEventListener("keydown", function (event) {
      if (event.key === "Enter") { free.click(); }
    });
    function released() {
      var by = noted(anchor).released;
      told.textContent = !by ? "" : fill(words["hold-released"], { t: bench.when(by.at), who: by.by })
        + (undone(anchor).length ? ". " + open(anchor) : "");
      bench.call(free, by ? words["take-back"] : usual, nameOf(screen));
      who.parentNode.hidden = !!by;
    }
    screen.released = released;
    home.before(make("p", "screen__day"));
    released();
  });

  function initials() { return state().initials || (state().initials = {}); }

  /* What is written down; fields are made when they are asked for. */
  all(".screen__write", view).forEach(function (details) {
    details.addEventListener("toggle", function () {
      if (details.open && !details.querySelector(".screen__fields")) { details.appendChild(fields(details)); }
    });
  });
  function field(home, label, key, anchor, words1, range, sight) {
    var line = make("label", "", label + (words1 && label.indexOf(words1) < 0 ? words.comma + " " + words1 : "")
      + (range ? " (" + range.getAttribute("data-range") + ")" : ""));
    var box = make("input");
    box.type = "text";
    if (words1) { box.inputMode = "decimal"; }
    box.value = noted(anchor)[key] || "";
    line.appendChild(box);
    home.appendChild(line);
    var told = home.appendChild(make("p", "screen__told"));
    told.setAttribute("role", "status");
    /* Kept while it is written; told when it is left. */
    function keep() {
      if (words1 && box.value.trim() && !/^\d+([.,]\d+)?$/.test(box.value.trim())) { return false; }
      note(anchor)[key] = box.value.trim();
      return bench.keep() || true;
    }
    box.addEventListener("input", keep);
    box.addEventListener("change", function () { if (keep()) { compare(); } else { told.textContent = words["read-number"]; } });
    /* What is written down is told to lie within, above or below what the sheet gives; nothing hangs on it. */
    function compare() {
      var number = Number(box.value.replace(",", "."));
      if (sight) { told.textContent = sighted(sight, box.value.trim(), noted(anchor)); return; }
      told.textContent = !range || !box.value.trim() || isNaN(number) ? "" : fill(words[number < range.getAttribute("data-low") ? "read-below"
        : number > range.getAttribute("data-high") ? "read-above" : "read-within"], { r: range.getAttribute("data-range") });
    }
    compare();
  }
  /* The colour of a bath is held against the same bath of the case and against the bath before; the sheet says when it is enough. */
  function sighted(sight, value, mine) {
    if (!value) { return ""; }
    var there = sight.getAttribute("data-there");
    var before = mine[["readings", sight.getAttribute("data-bath") - 1, "colour"].join("/")];
    function same(other) { return other.trim().toLowerCase() === value.toLowerCase(); }
    return [there ? fill(words[same(there) ? "read-as-case" : "read-not-case"], { c: there }) : "",
      before ? fill(words[same(before) ? "read-twice" : "read-before"], { b: before, u: sight.getAttribute("data-until") }) : ""].join(" ").trim();
  }
  function fields(details) {
    var screen = details.closest(".screen");
    var anchor = anchorOf(screen);
    var home = make("div", "screen__fields");
    all("[data-part]", details).forEach(function (item) {
      field(home, item.textContent, keyOf(item), ownerOf(item), item.getAttribute("data-unit") || item.getAttribute("data-before"),
        item.hasAttribute("data-range") && item, item.hasAttribute("data-until") && item);
    });
    bench.timers.forEach(function (timer) {
      if (screens[screenOf(timer)] !== screen) { return; }
      timer.looks.forEach(function (look) { field(home, look.name, "look/" + look.id, anchor); });
    });
    if (screen.hasAttribute("data-last")) {
      weighed(stageOf(anchor)).forEach(function (day) { field(home, bench.dayOf(day.at), day.key, anchor, "g"); });
      ["yes", "no"].forEach(function (as) {
        var line = make("label");
        var box = make("input");
        box.type = "radio"; box.name = "as-" + anchor; box.checked = noted(anchor).as === as;
        box.addEventListener("change", function () { note(anchor).as = as; bench.keep(); });
        line.appendChild(box);
        line.appendChild(make("span", "", words["as-" + as]));
        home.appendChild(line);
      });
      field(home, words.because, "because", anchor);
      field(home, words.pictures, "pictures", anchor);
    }
    return home;
  }
  /* The dry sheet is weighed before it is wetted, for the step in which it dries. */
  function ownerOf(item) { return item.getAttribute("data-of") || anchorOf(item.closest(".screen")); }
  function keyOf(item) {
    return [item.getAttribute("data-part"), item.getAttribute("data-bath"), item.getAttribute("data-key")].join("/");
  }

  /* The clock of the day: from what was begun and ended, else from the earliest end of what must be finished first. */
  var painted = "";
  function times() {
    var ends = {};
    /* What was stamped yesterday has its date today. */
    if (painted !== new Date(Date.now()).toDateString()) {
      painted = new Date(Date.now()).toDateString();
      stamps();
      screens.forEach(function (screen) { if (screen.released) { screen.released(); } });
    }
    stages.forEach(function (stage, index) {
      var mine = noted(stage.anchor);
      /* Where one of the steps before ends on another day, nobody can tell yet when this one begins. */
      var before = stage.after.map(function (anchor) { return ends[anchor]; });
      var begin = mine.began || (index === 0 || !before.length ? state().started
        : before.indexOf(undefined) < 0 ? Math.max.apply(null, before) + stage.wait : undefined);
      begin = begin && !mine.began ? Math.max(begin, Date.now()) : begin;
      var end = mine.ended || (begin ? Math.max(begin + stage.least, mine.began ? Date.now() : 0) : undefined);
      ends[stage.anchor] = mine.ended ? end : begin && !late(begin, end) ? end : undefined;
      var text = mine.ended ? fill(words.ended, { t: bench.when(mine.ended) })
        : mine.began ? fill(words.began, { t: bench.when(mine.began) }) + (ripe(stage) ? words.comma + " " + until(ripe(stage)) : "")
          : !begin ? "" : begin - Date.now() > 864e5 ? fill(words.earliest, { t: bench.dayOf(begin) })
          : late(begin, begin) ? words["after-closing"] + " (" + closes.join(":") + ")" : fill(words.earliest, { t: bench.when(begin) });
      stage.soonest = mine.began ? 0 : begin;
      stage.until.textContent = ripe(stage) ? until(ripe(stage)) : "";
      stage.until.hidden = !ripe(stage);
      var screen = screens[first(stage.anchor)];
      if (screen.querySelector(".screen__day")) { tooShort(screen, stage, index); }
      if (screen.querySelector(".screen__latest") && tooLong(screen, stage)) {
        text = fill(words["hold-over"], { t: bench.when(latest(screen, stage)) });
      }
      if (screens[first(stage.anchor)].classList.contains("screen--hold") && !mine.released) { text += (text ? " · ■ " : "■ ") + words["hold-open"]; }
      stage.when.textContent = text;
    });
    due();
  }
  bench.painted = function () { glance(); due(); };
  function late(begin, end) {
    var day = new Date(Date.now());
    day.setHours(Number(closes[0]), Number(closes[1]), 0, 0);
    return begin > day.getTime() || end > day.getTime();
  }
  function due() {
    var list = [];
    var here = screens[at()];
    bench.timers.forEach(function (timer) {
      var now = timer.mine();
      if (awaited(timer)) { list.push({ end: Date.now(), timer: timer, text: words["to-start"] }); }
      if (!now.began || now.answered) { return; }
      if (!now.end) { list.push({ end: Date.now(), timer: timer, text: words.paused }); return; }
      var end = now.end;
      list.push({ end: end, timer: timer });
      for (var last = timer, follow = after(timer); follow && follow !== timer && !follow.mine().began && list.length < 12;
        last = follow, follow = after(follow)) {
        var from = end + between(last, follow);
        end = from + follow.length() * 1000;
        list.push({ end: follow.kind === "bath" ? from : end, timer: follow, text: words.earliest });
      }
    });
    /* A step of days, where none of its clocks is told. */
    stages.forEach(function (stage) {
      if (!ripe(stage) || list.some(function (one) { return one.timer.step === stage.anchor; })
        || stage.anchor === anchorOf(here)) { return; }
      list.push({ end: ripe(stage), timer: { kind: "whole", step: stage.anchor, id: 0 } });
    });
    list.sort(function (one, other) { return one.end - other.end; });
    /* What the screen itself counts is not told once more at its head. */
    var text = list.slice(0, 3).filter(function (one) { return !here.querySelector("[data-face='" + one.timer.id + "']"); }).map(function (one) {
      return (one.text === words.earliest ? one.timer.label + words.comma + " " : "") + fill(one.text || words[one.end <= Date.now() ? "due-now" : one.timer.kind === "change" || one.timer.kind === "look" ? "due-at" : "ends-at"],
        { t: bench.when(one.end), what: one.timer.kind === "whole" ? stageOf(one.timer.step).name : one.timer.label });
    });
    if (strip.getAttribute("data-text") === text.join()) { return; }
    strip.setAttribute("data-text", text.join());
    strip.textContent = "";
    text.forEach(function (one) { strip.appendChild(make("li", "", one)); });
  }
  /* The time that a change of the bath takes, as the sheet counts it. */
  function between(one, other) { return one.due && other.due ? Math.max(0, (other.due - one.due - other.usual) * 1000) : 0; }
  /* The sheet was lifted out for this bath and is not in it yet. */
  function awaited(timer) {
    var before = bench.timers.filter(function (one) { return one.then === timer.id && one !== timer; })[0];
    return before && before.mine().answered && !timer.mine().began && !noted(timer.step).ended;
  }
  function screenOf(timer) {
    return screens.findIndex(function (screen) { return screen.querySelector("[data-face='" + timer.id + "']"); });
  }
  function after(timer) { return bench.timers.filter(function (one) { return one.id === timer.then; })[0]; }
  var started = part("started");
  function begin(time) {
    state().started = time;
    note(stages[0].anchor).began = time;
    bench.keep();
    started.value = bench.clock(time);
    times();
  }
  started.addEventListener("change", function () {
    var clock = started.value.split(":");
    if (clock.length < 2) { return; }
    var day = new Date(Date.now());
    day.setHours(Number(clock[0]), Number(clock[1]), 0, 0);
    begin(day.getTime());
  });
  bench.sure(part("now"), words.again, function () { return state().started; }, function () { begin(Date.now()); });
  window.setInterval(times, 5000);

  /* Looks while a clock goes on ring as its end does. */
  bench.timers.forEach(function (timer) {
    var home = screens[screenOf(timer)];
    timer.looks = (home ? all("[data-at]", home) : []).map(function (line) {
      var look = { id: timer.id + line.dataset.at, at: Number(line.dataset.at), line: line, of: timer, step: timer.step, what: timer.what,
        name: line.textContent.replace(/\s+/g, " "), said: timer.what + ": " + line.textContent, seen: function () { return noted(timer.step)["looked/" + look.id] || {}; }, when: line.appendChild(make("span")), wait: 0,
        mine: function () { return { end: look.end }; },
        /* What is answered answers those before it; what a key closed rings again. */
        snooze: function (seconds) {
          if (seconds) { look.wait = Date.now() + seconds * 1000; return; }
          state().looked = state().looked || {};
          state().looked[timer.id] = [timer.mine().began, look.at];
          bench.keep();
        } };
      return look;
    });
  });
  function glance() {
    bench.timers.forEach(function (timer) {
      var now = timer.mine();
      var runs = now.end && !now.answered && !now.due && timer.left() > 0;
      var since = timer.length() - timer.left();
      var seen = (state().looked || {})[timer.id];
      var next = timer.looks.filter(function (look) { return look.at > since; })[0];
      timer.looks.forEach(function (look) {
        look.end = Date.now() + (look.at - since) * 1000;
        look.line.hidden = look !== next;
        look.when.textContent = runs ? words.comma + " " + bench.when(look.end) : "";
        if (runs && look.at <= since && (!seen || seen[0] !== now.began || look.at > seen[1]) && look.wait < Date.now()) { bench.ring(look); }
      });
    });
  }

  /* The ring. */
  var air = null;
  function awaken() {
    var Air = window.AudioContext || window.webkitAudioContext;
    if (state().silent || !Air) { return false; }
    try {
      air = air || new Air();
      if (air.state === "suspended") { air.resume(); }
    } catch (refused) { return false; }
    return true;
  }
  document.addEventListener("pointerup", awaken);
  document.addEventListener("keydown", awaken);
  function sound(times1) {
    if (state().silent) { return; }
    if (navigator.vibrate) { navigator.vibrate([300, 150, 300, 150, 300].slice(0, times1 * 2 - 1)); }
    if (!air) { return; }
    for (var i = 0; i < times1; i++) {
      var tone = air.createOscillator();
      var loud = air.createGain();
      var from = air.currentTime + i * 0.6;
      tone.frequency.value = 880;
      loud.gain.setValueAtTime(0.0001, from);
      loud.gain.exponentialRampToValueAtTime(0.4, from + 0.02);
      loud.gain.exponentialRampToValueAtTime(0.0001, from + 0.4);
      tone.connect(loud);
      loud.connect(air.destination);
      tone.start(from);
      tone.stop(from + 0.45);
    }
  }
  var mute = part("sound");
  function muted() {
    mute.textContent = words[state().silent ? "sound-off" : "sound-on"];
    mute.setAttribute("aria-pressed", String(!state().silent));
  }
  mute.addEventListener("click", function () {
    state().silent = state().silent ? 0 : 1;
    bench.keep();
    muted();
    if (awaken()) { sound(1); }
  });
  var ringing = [];
  var rung = 0;
  var bell = make("dialog", "ring");
  bell.setAttribute("role", "alertdialog");
  document.body.appendChild(bell);
  bench.ring = function (timer) {
    if (ringing.indexOf(timer) < 0) { ringing.push(timer); }
    /* A step that rang and has in the meantime taken as long as it may is no longer gone on with. */
    if (tolled !== ringing.map(saying).join()) {
      toll();
    } else if (bell.open && Date.now() - rung > 30000 && Date.now() - timer.mine().end < 300000) {
      rung = Date.now();
      sound(3);
    }
    all("[data-rung]", bell).forEach(function (line) { line.textContent = ago(ringing[Number(line.getAttribute("data-rung"))]); });
  };
  var tolled = "";
  function saying(timer) { return timer.said || timer.over(timer.what); }
  /* Who looked and went on is late from the time to which they went on, at most from when it had to be over. */
  function dueOf(timer) {
    var now = timer.mine();
    return timer.kind !== "whole" ? now.due || now.end : Math.min(now.end, timer.due ? now.began + timer.due * 1000 : Infinity);
  }
  function ago(timer) {
    var late1 = Math.floor((Date.now() - dueOf(timer)) / 1000);
    return late1 < 5 ? words["ended-now"] : fill(words["ended-ago"], { time: bench.digits(late1) });
  }
  /* A finger that is on its way down answers nothing: what is pressed within a second does not count. */
  function act(text, timer, work) {
    return bench.button(text, timer.what, function () { if (!bench.soon(rung, 1000)) { work(); } });
  }
  function toll() {
    bell.textContent = "";
    ringing.sort(function (one, other) { return dueOf(one) - dueOf(other); });
    tolled = ringing.map(saying).join();
    ringing.forEach(function (timer, index) {
      var one = make("div", "ring__one");
      var what = make("p", "ring__what", saying(timer));
      what.id = "ring-" + index;
      one.appendChild(what);
      var when = make("p", "ring__when", ago(timer));
      when.setAttribute("data-rung", String(index));
      one.appendChild(when);
      var buttons = make("div", "ring__buttons");
      if (timer.of) {
        ["yes", "no"].forEach(function (as) {
          buttons.appendChild(act(words["as-" + as], timer, function () { saw(timer, as); }));
        });
        one.appendChild(buttons);
        bell.appendChild(one);
        return;
      }
      if (timer.said) {
        buttons.appendChild(act(words["go-there"], timer, function () {
          timer.snooze();
          quiet(timer);
          if (document.body.classList.contains("at-bench")) { go("screen" in timer ? timer.screen : first(timer.step)); }
        }));
        one.appendChild(buttons);
        bell.appendChild(one);
        return;
      }
      var follow = after(timer);
      var hand = { bath: "lift-out", change: "change-now" }[timer.kind];
      buttons.appendChild(act(hand ? words[hand] : follow ? fill(words["answer-next"], { what: follow.label, length: bench.digits(follow.length()) }) : words.answer, timer,
        function () { answered(timer, hand); }));
      var whole = timer.kind === "whole";
      if (whole && looks(timer)) {
        buttons.replaceChildren(act(words["go-there"], timer, function () { answered(timer, true); }));
      } else if (whole) {
        buttons.replaceChildren(act(words.end, timer, function () { mark(timer.step, "ended", true); quiet(timer); }));
      }
      var more = function () { return whole ? Math.min(300, timer.spare()) : 60; };
      if (more() >= 1) {
        buttons.appendChild(act(whole ? fill(words["go-on-for"], { length: bench.digits(more()) }) : words.snooze, timer,
          function () { timer.snooze(more()); quiet(timer); }));
      }
      one.appendChild(buttons);
      bell.appendChild(one);
    });
    bell.setAttribute("aria-labelledby", ringing.map(function (timer, index) { return "ring-" + index; }).join(" "));
    if (!bell.open) { bell.showModal(); }
    bell.querySelector("button").focus({ preventScroll: true });
    bell.scrollTop = 0;
    rung = Date.now();
    sound(3);
  }
  /* What a look showed is kept with its minute. What was not expected halts the clock, and what the case says to do then is told at once. */
  function saw(look, as) {
    var mine = note(look.step);
    mine["look/" + look.id] = mine["look/" + look.id] || words["as-" + as];
    mine["looked/" + look.id] = { at: Date.now(), began: look.of.mine().began };
    look.snooze();
    if (as === "no") {
      look.of.pause();
      var time = Date.now();
      var screen = screens[screenOf(look.of)];
      var otherwise = all("details.screen__watch", screen).pop();
      var text = otherwise && otherwise.querySelector("p").textContent;
      ringing.push({ id: "else-" + look.id, what: look.what, said: !text || text === screen.querySelector(".screen__do").textContent ? look.said : text,
        step: look.step, screen: screenOf(look.of), mine: function () { return { end: time }; }, snooze: function () { } });
    }
    quiet(look);
  }
  function quiet(timer) {
    ringing = ringing.filter(function (one) { return one !== timer && one.of !== timer && !(timer.of && one.of === timer.of && one.at < timer.at); });
    if (ringing.length) { toll(); } else { tolled = ""; bell.close(); }
    times();
  }
  /* At the bench a step whose time is over is looked at before it is done, where a screen tells what one should see. */
  function looks(timer) {
    return document.body.classList.contains("at-bench") && screenOf(timer) >= 0 && !screens[screenOf(timer)].hasAttribute("data-last");
  }
  /* Where the timer's own screen is shown, the screen of what follows comes; elsewhere the hand stays where it is. But what a
     hand does when a bath or the time to a change of blotters is over comes first, and the next clock is started when that is
     done: the change tells it beside that clock, a bath on the screen after its own, if the step cannot end here. */
  function answered(timer, hand) {
    var here = screenOf(timer) === at();
    var follow = hand ? after(timer) : timer.answer();
    timer.stop();
    quiet(timer);
    if (!document.body.classList.contains("at-bench")) { return; }
    if (hand && (timer.kind !== "change" || !follow)) { go(screenOf(timer) + (screens[screenOf(timer)].hasAttribute("data-enough") ? 0 : 1)); }
    else if ((hand || here) && follow) { go(screenOf(follow)); }
  }
  function leadOn(anchor) {
    if (noted(anchor).ended) { go(screens.map(anchorOf).lastIndexOf(anchor) + 1); }
  }
  /* A key or a gesture that closes the ring answers nothing: it rings again in a minute. */
  bell.addEventListener("close", function () {
    ringing.forEach(function (timer) { timer.snooze(60); });
    ringing = [];
    tolled = "";
    times();
  });

  /* The record, in the form that record.schema.json describes; what was not written down is not there. */
  function whole() {
    return { "case": view.getAttribute("data-case"), sheet: state().record ? state().record.issue : view.getAttribute("data-issue"), written: bench.stampText(Date.now()),
      steps: stages.filter(function (stage) { return Object.keys(noted(stage.anchor)).length; }).map(entry) };
  }
  function entry(stage) {
    var mine = noted(stage.anchor);
    var one = { step: stage.id };
    if (mine.began) { one.began = bench.stampText(mine.began); }
    if (mine.ended) { one.ended = bench.stampText(mine.ended); }
    if (mine.released) { one.released = { by: mine.released.by, role: mine.released.role, at: bench.stampText(mine.released.at) }; }
    if (mine.as) { one.seen = mine.as === "yes" ? "as expected" : "not as expected"; }
    if (mine.because) { one.because = mine.because; }
    if (mine.pictures) { one.pictures = mine.pictures; }
    all("[data-part]", view).forEach(function (item) {
      if (ownerOf(item) !== stage.anchor || !mine[keyOf(item)]) { return; }
      var home = bench.home(one, item.getAttribute("data-part"), Number(item.getAttribute("data-bath")));
      if (home.test) { home.what = item.closest(".screen").querySelector(".screen__hand").textContent + ": " + item.textContent; }
      home[item.getAttribute("data-key")] = bench.valueOf(item, mine[keyOf(item)]);
    });
    looked(stage).forEach(function (look, index) {
      var home = bench.home(one, "looks", index + 1);
      home.what = look.of.label + ": " + look.name;
      if (look.seen().at) {
        home.at = bench.stampText(look.seen().at);
        home.after = Math.floor(Math.max(0, look.seen().at - look.seen().began) / 60000) + " min";
      }
      if (mine["look/" + look.id]) { home.seen = mine["look/" + look.id]; }
    });
    weighed(stage).forEach(function (day, index) {
      if (!mine[day.key]) { return; }
      var home = bench.home(one, "days", index + 1);
      home.on = bench.stampText(day.at).slice(0, 10);
      home.mass = mine[day.key].replace(",", ".") + " g";
    });
    return one;
  }
  /* Looks that were answered or of which something was written. */
  function looked(stage) {
    return bench.timers.filter(function (timer) { return timer.step === stage.anchor; }).reduce(function (looks, timer) { return looks.concat(timer.looks); }, [])
      .filter(function (look) { return look.seen().at || noted(stage.anchor)["look/" + look.id]; });
  }
  /* A sheet that dries for days is weighed on each of them, and on those that it takes longer. */
  function weighed(stage) {
    var began = noted(stage.anchor).began;
    var until = noted(stage.anchor).ended || Date.now();
    var days = !began || stage.least < 864e5 || !all("[data-screen='" + stage.anchor + "'] [data-part=weighing]", view).length ? 0
      : Math.max(stage.least, until - began) / 864e5;
    return Array.from({ length: Math.floor(days) }, function (none, index) { return { key: "day/" + (index + 1), at: began + (index + 1) * 864e5 }; });
  }
  function saved() { return JSON.stringify(whole(), null, 2) + "\n"; }
  /* The same on paper: a line for each thing that was written down. */
  function written() {
    return document.querySelector(".opening__heading").textContent.trim() + "\n\n" + (whole().steps.map(lines).join("\n") || words["record-none"]);
  }
  /* When each bath, drop and change began and ended, by its timer: the case file has no place for it, the paper has. */
  function clocked(stage) {
    return bench.timers.filter(function (timer) { return timer.step === stage.anchor && timer.mine().began && timer.kind !== "whole"; }).map(function (timer) {
      var now = timer.mine();
      return timer.label + ": " + fill(words[now.answered ? "stopped-at" : "started-at"], { t: bench.when(now.began),
        u: bench.when(now.answered || now.due || now.end || Date.now()) }) + "\n";
    }).join("");
  }
  function lines(one) {
    var stage = stages.filter(function (each) { return each.id === one.step; })[0];
    return Object.keys(one).map(function (key) {
      var part = one[key];
      if (key === "step") { return stage.name + "\n"; }
      return key + ": " + (Array.isArray(part) ? "\n  " + part.map(inOneLine).join("\n  ")
        : typeof part === "object" ? inOneLine(part) : part) + "\n";
    }).join("") + clocked(stage);
  }
  function inOneLine(group) {
    return Object.keys(group).map(function (key) { return key + ": " + group[key]; }).join(", ");
  }
  var log = view.querySelector("[data-screen=record] .screen__told");
  part("copy").addEventListener("click", function () {
    var copied = navigator.clipboard ? navigator.clipboard.writeText(saved()) : Promise.reject();
    copied.then(function () { log.textContent = words.copied; }, function () { log.textContent = words["copy-no"]; });
  });
  part("save").addEventListener("click", function () {
    bench.hand(saved(), view.getAttribute("data-case") + "-record-" + bench.stampText(Date.now()).slice(0, 10) + ".json");
  });
  bench.save = function () { part("save").click(); };
  part("print").addEventListener("click", function () {
    document.body.classList.add("print-record");
    window.print();
    document.body.classList.remove("print-record");
  });

  /* A page that was loaded again may neither sound nor keep the screen on before it is touched. */
  function mutely() {
    var status = document.querySelector(".bench-desk__status");
    if (state().silent || !bench.timers.some(function (timer) { return timer.mine().end && !timer.mine().answered; })) { return; }
    [said, status].forEach(function (line) { line.textContent = (line.textContent + " " + words["tap-once"]).trim(); });
    said.classList.remove("bench__said--unseen");
    ["click", "keydown"].forEach(function (kind) { document.addEventListener(kind, woken); });
    function woken() {
      ["click", "keydown"].forEach(function (kind) { document.removeEventListener(kind, woken); });
      bench.stayOn();
      [said, status].forEach(function (line) { if (line.textContent.indexOf(words["tap-once"]) >= 0) { hush(line, line.textContent.replace(words["tap-once"], "").trim()); } });
    }
  }

  /* Opening. */
  bench.cleared = function () {
    stamps();
    screens.forEach(function (screen) { if (screen.released) { screen.released(); } });
    all(".screen__fields", view).forEach(function (home) { home.closest("details").open = false; home.remove(); });
    started.value = "";
    muted();
    show();
  };
  muted();
  if (state().started) { started.value = bench.clock(state().started); }
  if (state().record && bench.changed(state().record, view.getAttribute("data-issue"))) {
    document.querySelector(".bench-desk__status").textContent = words.changed;
    tell(words.changed);
  }
  show();
  read.addEventListener("change", function () { if (read.checked && phone.matches) { bench.stayOn(); enter(at()); } });
  if (read.checked && phone.matches && !state().sheet && !location.hash) { enter(at()); }
  mutely();
  bench.timers.forEach(function (timer) { timer.tick(); });
}());
