/* Gives what a text of the content could have brought into the page: traps sprung, scripts, handlers, frames, addresses. */
var found = window.sprungTraps.slice();
var note = function (why, element) { found.push(why + ": " + element.outerHTML.slice(0, 200)); };
document.querySelectorAll("script").forEach(function (script) {
  var data = /^application\/(ld\+)?json$/.test(script.type);
  if (!data && !/^(\.\.\/)*assets\/|^(\.\.\/)*[\w./-]+\.js$/.test(script.getAttribute("src") || "")) { note("script", script); }
});
document.querySelectorAll("iframe, frame, object, embed, applet, base, foreignObject, animate, set, marquee, video, audio, "
    + "meta[http-equiv=refresh i], link[rel=import i]").forEach(function (element) { note("element", element); });
document.querySelectorAll("*").forEach(function (element) {
  Array.prototype.forEach.call(element.attributes, function (attribute) {
    if (/^on/i.test(attribute.name)) { note("handler", element); }
    if (/^(href|src|action|formaction|data|xlink:href|poster|background)$/i.test(attribute.name)
        && /^[\s\x00-\x20]*(?!https?:|mailto:)[a-z][a-z0-9+.-]*:/i.test(attribute.value)) { note("address", element); }
  });
});
return found;
