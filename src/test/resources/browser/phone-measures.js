/* What the way from an open sheet to the running clock of its third step costs on this screen, as text: whether the bench view
   opens when the briefing is ticked off, how far down the first action begins in px, how often one taps besides what hold points before
   that step ask for, how many of these there are, whether the clock runs, how far below the screen the ways back and on reach at
   worst in px, and where the taps ended. */
const now = Date.now;
let later = 0;
Date.now = () => now() + later;
let taps = 0;
const tap = element => { taps += 1; element.click(); };
const shown = () => document.querySelector(".screen:not([hidden])");
const stages = document.querySelectorAll("[data-stage] button");
tap(document.getElementById("tick-briefing"));
const opened = !document.getElementById("bench").hidden;
tap(stages[2]);
let holds = 0;
for (let more = 0; more < 8 && !shown().querySelector(".screen__time button"); more += 1) {
  const release = shown().querySelector(".screen__release");
  if (release) {
    holds += 1;
    release.querySelector("input").value = "AB";
    // What is not marked as done is asked for first.
    release.querySelector("button").click();
    later += 3000;
    release.querySelector("button").click();
    document.querySelector("[data-bench=next]").click();
    stages[2].click();
  } else {
    tap(document.querySelector("[data-bench=next]"));
  }
}
const clock = shown().querySelector(".screen__time");
const before = clock.textContent;
tap(clock.querySelector("button"));
const answer = [opened, clock.textContent !== before, shown().querySelector(".screen__name").textContent.replace(/\s+/g, " ").trim()];
stages[0].click();
const action = shown().querySelector(".screen__do").getBoundingClientRect().top;
let below = 0;
for (const screen of document.querySelectorAll(".screen")) {
  for (const other of document.querySelectorAll(".screen")) { other.hidden = other !== screen; }
  for (const way of ["back", "next"]) {
    below = Math.max(below, document.querySelector("[data-bench=" + way + "]").getBoundingClientRect().bottom - window.innerHeight);
  }
}
return [answer[0], Math.round(action), taps, holds, answer[1], Math.round(below), answer[2]].map(String);
