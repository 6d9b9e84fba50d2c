// While a word is typed the status line is silent; once typing stops it speaks once.
const done = arguments[arguments.length - 1];
const input = document.querySelector("[data-search] input, [role=search] input, input[type=search]");
if (!input) { done([]); return; }
const pause = time => new Promise(go => setTimeout(go, time));
(async () => {
  const before = window.__witness.said.length;
  for (const letter of "paper") {
    input.value += letter;
    input.dispatchEvent(new Event("input", { bubbles: true }));
    await pause(20);
  }
  await pause(700);
  const said = window.__witness.said.slice(before);
  done(said.length > 1 ? ["while one word was typed it said: " + said.join(" | ")]
    : said.length === 0 ? ["it never said what was found"] : []);
})();
