/* Keeps the whole site on the device, one edition at a time. The list of its files, with what each must hash to, stands in
   kept-files.js; a browser takes a change of that list for a new edition. Files are fetched with their hashes, so that an
   edition of which only a part is on the server yet is not kept at all, and the one before stays. */
(function () {
  "use strict";
  importScripts("kept-files.js");
  var edition = self.keptFiles;
  var scope = self.registration.scope;
  var prefix = "benchleaf " + scope + " ";
  var name = prefix + edition.mark;
  var LIST = "kept-files.list";

  function address(path) { return new URL(path, scope).href; }

  function caseOf(path) {
    var parts = path.split("/");
    return parts[0] === "cases" && parts.length > 2 ? parts[1] : "";
  }

  function cases(files) {
    var found = {};
    Object.keys(files).forEach(function (path) {
      var id = caseOf(path);
      if (id) { (found[id] = found[id] || []).push(path); }
    });
    return found;
  }

  /* The editions before this one, each with its list. */
  function earlier() {
    return caches.keys().then(function (names) {
      return Promise.all(names.filter(function (other) { return other.indexOf(prefix) === 0 && other !== name; }).map(function (other) {
        return caches.open(other).then(function (cache) {
          return cache.match(address(LIST)).then(function (list) { return list ? list.json() : {}; }).then(function (files) {
            return { name: other, cache: cache, files: files };
          });
        });
      }));
    });
  }

  /* Whether an edition before this one has a case that this one has no more. */
  function isUrgent(before) {
    var now = cases(edition.files);
    return before.some(function (other) { return Object.keys(cases(other.files)).some(function (id) { return !now[id]; }); });
  }

  /* What of a case is no longer in the site leaves at once, before anything new is fetched. */
  function takeDown(before) {
    return Promise.all(before.map(function (other) {
      return Promise.all(Object.keys(other.files).map(function (path) {
        return caseOf(path) && !edition.files[path] ? other.cache.delete(address(path)) : null;
      }));
    }));
  }

  function fetched(path) {
    return fetch(address(path), { integrity: edition.files[path], cache: "no-cache", credentials: "same-origin" }).then(function (answer) {
      if (!answer.ok) { throw new Error(path); }
      return answer;
    });
  }

  function known(path, before) {
    var same = before.filter(function (other) { return other.files[path] === edition.files[path]; })[0];
    return same ? same.cache.match(address(path)) : Promise.resolve(undefined);
  }

  function fill(before) {
    return caches.open(name).then(function (cache) {
      var paths = Object.keys(edition.files);
      function next() {
        var path = paths.shift();
        if (path === undefined) { return null; }
        return known(path, before).then(function (kept) { return kept || fetched(path); }).then(function (answer) {
          return cache.put(address(path), answer);
        }).then(next);
      }
      return Promise.all([next(), next(), next(), next(), next(), next()]).then(function () {
        return cache.put(address(LIST), new Response(JSON.stringify(edition.files)));
      });
    });
  }

  self.addEventListener("install", function (event) {
    event.waitUntil(earlier().then(function (before) {
      return takeDown(before).then(function () { return fill(before); }).then(function () {
        /* A sheet does not change in mid-bath: a new edition waits until the pages of the old one are left. Only where a case was
           taken down it begins at once. */
        return isUrgent(before) ? self.skipWaiting() : null;
      });
    }).catch(function (failed) {
      return caches.delete(name).then(function () { throw failed; });
    }));
  });

  self.addEventListener("activate", function (event) {
    event.waitUntil(earlier().then(function (before) {
      return Promise.all(before.map(function (other) { return caches.delete(other.name); }));
    }));
  });

  /* The path of a file, and of a picture that is kept narrower than it is asked for, that of the widest size at hand. */
  function keptPath(url) {
    var path = decodeURIComponent(url.href.slice(scope.length).replace(/[?#].*$/, ""));
    path = path === "" || path.charAt(path.length - 1) === "/" ? path + "index.html" : path;
    if (edition.files[path]) { return path; }
    var size = /^(.*-)[0-9]+(\.[a-z]+)$/.exec(path);
    return size && caseOf(path) ? widest(size[1], size[2]) : "";
  }

  function widest(start, ending) {
    var best = "";
    var most = 0;
    Object.keys(edition.files).forEach(function (path) {
      var width = path.slice(start.length, -ending.length);
      if (path.indexOf(start) === 0 && path.slice(-ending.length) === ending && /^[0-9]+$/.test(width) && +width > most) {
        most = +width;
        best = path;
      }
    });
    return best;
  }

  self.addEventListener("fetch", function (event) {
    var url = new URL(event.request.url);
    if (event.request.method !== "GET" || url.href.indexOf(scope) !== 0) { return; }
    var path = keptPath(url);
    if (!path) { return; }
    /* What the device threw away comes again, but only as this edition has it. */
    event.respondWith(caches.open(name).then(function (cache) { return cache.match(address(path)); }).then(function (kept) {
      return kept || fetched(path);
    }));
  });

  function told() {
    return caches.open(name).then(function (cache) {
      return cache.keys().then(function (requests) {
        var there = {};
        requests.forEach(function (request) { there[request.url] = true; });
        var all = cases(edition.files);
        return Promise.all(Object.keys(all).map(function (id) {
          var pages = all[id].filter(function (path) { return /\.html$/.test(path); });
          return title(cache, pages[0] || "").then(function (text) {
            return {
              id: id,
              title: text || id,
              mark: pages.map(function (path) { return edition.files[path]; }).join(),
              kept: all[id].every(function (path) { return there[address(path)]; })
            };
          });
        })).then(function (list) {
          return earlier().then(function (before) { return { on: edition.on, cases: list, urgent: isUrgent(before) }; });
        });
      });
    });
  }

  function title(cache, path) {
    return cache.match(address(path)).then(function (page) { return page ? page.text() : ""; }).then(function (text) {
      var heading = /<h1[^>]*>([^<]*)</.exec(text);
      return heading ? heading[1].replace(/&#39;/g, "'").replace(/&quot;/g, '"').replace(/&lt;/g, "<").replace(/&gt;/g, ">").replace(/&amp;/g, "&") : "";
    });
  }

  self.addEventListener("message", function (event) {
    if (event.data === "begin") { event.waitUntil(self.skipWaiting()); }
    if (event.data === "kept" && event.ports[0]) {
      event.waitUntil(told().then(function (answer) { event.ports[0].postMessage(answer); }));
    }
  });
}());
