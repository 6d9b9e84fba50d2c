// Puts the focus to every stop of a tour again, as a key would, and tells what is wrong with it there. What this look does not
// show takes no focus.
return Array.from(window.__stops.keys()).filter(element => element.isConnected).flatMap(element => {
  element.focus({ focusVisible: true });
  return document.activeElement === element ? JSON.parse(window.__where()).faults.map(fault => told(element) + ": " + fault) : [];
});
