// While a word is typed the status line is silent; once typing stops it speaks once. On a busy machine a letter may come so late
// that typing did stop: such a word is typed again.
const done = arguments[arguments.length - 1];
const input = document.querySelector("[data-search] input, [role=search] input, input[type=search]");
if (!input) { done([]); return; }
const pause = time => new Promise(go => setTimeout(go, time));
const STOPPED = 250;
const type = async () => {
  let last = performance.now();
  let longest = 0;
  input.value = "";
  for (const letter of "paper") {
    input.value += letter;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    await pause(20);
    longest = Math.max(longest, performance.now() - last);
    last = performance.now();
  }
  return longest < STOPPED;
};
(async () => {
  let before = window.__witness.said.length;
  while (!await type()) {
    await pause(2000);
    before = window.__witness.said.length;
  }
  const until = performance.now() + 20000;
  while (window.__witness.said.length === before && performance.now() < until) { await pause(50); }
  await pause(700);
  const said = window.__witness.said.slice(before);
  done(said.length > 1 ? ["while one word was typed it said: " + said.join(" | ")]
    : said.length === 0 ? ["it never said what was found"] : []);
})();
