/* How many words can be read on each screen of the bench view, and which screen it is: at rest and while its clocks run, a hold
   point before and after its release, also where nothing before it was marked as done, on an afternoon on which the steps before were done and the day has become too short. */
const now = Date.now;
const afternoon = new Date(now());
let later = afternoon.setHours(15, 6, 0, 0) - now();
Date.now = () => now() + later;
document.getElementById("tick-briefing").checked = true;
document.querySelector("[data-desk=bench]").click();
const bench = window.benchleaf;
const stages = [...document.querySelectorAll("[data-stage]")].map(stage => stage.dataset.stage);
const told = [];
const tell = (screen, state) => {
  const words = document.querySelector(".bench").innerText.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word));
  const unseen = document.querySelector(".bench__heading").innerText.split(/\s+/).length;
  told.push(words.length - unseen + " " + screen.querySelector(".screen__name").textContent + state);
};
bench.state().record = bench.begun({ steps: {} }, document.querySelector("[data-issue]").dataset.issue);
const steps = bench.state().record.steps;
[...document.querySelectorAll(".screen")].forEach((screen, index) => {
  if (!screen.dataset.screen.startsWith("step-")) { return; }
  const mine = stages.indexOf(screen.dataset.screen);
  const hold = screen.classList.contains("screen--hold");
  bench.state().timers = {};
  bench.state().at = index;
  stages.forEach((stage, place) => {
    steps[stage] = { ...(place < mine && { began: Date.now() - 2000, ended: Date.now() - 1000 }),
      ...((place < mine || place === mine && !hold) && { released: { by: "AB", role: "", at: Date.now() } }) };
  });
  bench.timers.forEach(timer => timer.paint());
  bench.cleared();
  document.querySelector(".bench__said").textContent = "";
  tell(screen, "");
  if (hold) {
    screen.querySelector("input").value = "AB";
    later += 3000;
    screen.querySelector(".screen__release button").click();
    tell(screen, ", released");
    stages.forEach(stage => { delete steps[stage].ended; delete steps[stage].released; });
    bench.cleared();
    screen.querySelector("input").value = "AB";
    later += 11000;
    screen.querySelector(".screen__release button").click();
    tell(screen, ", nothing marked as done");
    later += 3000;
    screen.querySelector(".screen__release button").click();
    tell(screen, ", nothing marked as done, released");
    return;
  }
  const clocks = [...screen.querySelectorAll(".timer__run")];
  clocks.forEach(clock => {
    later += 2000;
    clock.querySelector("button").click();
  });
  if (clocks.length) { tell(screen, ", running"); }
  if (!clocks.length && screen.hasAttribute("data-last")) {
    steps[screen.dataset.screen].began = Date.now();
    bench.state().timers = {};
    bench.cleared();
    document.querySelector(".bench__said").textContent = "";
    tell(screen, ", begun");
  }
});
return told;
