/* How many words can be read on each screen of the bench view that tells an action, and which screen it is: at a hold point
   the work stops, and what decides over it is told in full. */
document.getElementById("tick-briefing").checked = true;
document.querySelector("[data-desk=bench]").click();
const screens = [...document.querySelectorAll(".screen")].filter(screen =>
  screen.dataset.screen.startsWith("step-") && !screen.classList.contains("screen--hold"));
return screens.map(screen => {
  for (const other of document.querySelectorAll(".screen")) { other.hidden = other !== screen; }
  const words = document.querySelector(".bench").innerText.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word));
  const unseen = document.querySelector(".bench__heading").innerText.split(/\s+/).length;
  return words.length - unseen + " " + screen.querySelector(".screen__name").textContent;
});
