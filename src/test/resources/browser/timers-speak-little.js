// A timer that is started speaks at most six times until well after its end. Time is moved on by the clock that the page
// reads; what the page does again and again is then done at once.
const done = arguments[arguments.length - 1];
const home = document.querySelector("[data-timer]:has([role=timer])");
if (!home) { done([]); return; }
const briefing = document.getElementById("tick-briefing");
if (briefing) { briefing.checked = true; }
const clock = Date.now;
let shift = 0;
Date.now = () => clock() + shift;
const pause = () => new Promise(go => setTimeout(go, 0));
(async () => {
  const before = window.__witness.said.length;
  home.querySelector("button").click();
  await pause();
  const seconds = Number(home.dataset.seconds) || 1800;
  for (let gone = 0; gone < seconds + 120; gone += Math.max(15, seconds / 120)) {
    shift = gone * 1000;
    window.__witness.intervals.forEach(repeated => repeated.work());
    await pause();
  }
  Date.now = clock;
  const said = window.__witness.said.slice(before);
  const found = said.length > 6 ? ["it spoke " + said.length + " times: " + said.slice(0, 8).join(" | ")] : [];
  if (said.length < 2) { found.push("it did not say that it began and ended: " + said.join(" | ")); }
  done(found);
})();
