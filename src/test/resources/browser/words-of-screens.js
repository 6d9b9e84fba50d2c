/* How many words can be read on each screen of the bench view, and which screen it is. */
document.querySelector("[data-desk=bench]").click();
const screens = [...document.querySelectorAll(".screen")].filter(screen => screen.dataset.screen.startsWith("step-"));
return screens.map(screen => {
  for (const other of document.querySelectorAll(".screen")) { other.hidden = other !== screen; }
  const words = document.querySelector(".bench").innerText.split(/\s+/).filter(word => /[\p{L}\p{N}]/u.test(word));
  const unseen = document.querySelector(".bench__heading").innerText.split(/\s+/).length;
  return words.length - unseen + " " + screen.querySelector(".screen__name").textContent;
});
