/* Searches the index that search-index.js has put on the window: a line for each page, with the stems of its words. A word
   typed is found by its stem, by its beginning and in spite of a slip; the sentences that hold it come from a file beside each
   page found, each with the part of the page in which it stands: there the result opens. Further files of the index are loaded while too little is found. */
(function () {
  "use strict";
  var form = document.querySelector("[data-search]");
  if (!form || !window.BENCHLEAF_INDEX) { return; }
  var input = form.querySelector("input");
  var status = document.querySelector("[data-search-status]");
  var list = document.querySelector("[data-search-results]");
  var words = form.dataset;
  var MOST = 50, WITH_SENTENCE = 12, ENOUGH = 200, LONGEST_ENDING = 7, USUAL_ENDING = 3, LONGEST_OF_A_SLIP = 4, SHORTEST_SENTENCE = 5, CAPITAL_A = 65;
  var waiting = 0, turns = 0, loaded = 1, lines = 0;
  var SIGNS = "0123456789abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ!#$%()*+,-./:;=?@[]^_{|}~";
  var stems = new Map(), pages = [], sentences = new Map(), wanting = new Map();

  /* A page's sentences call this when their file has been loaded. */
  window.BENCHLEAF_SENTENCES = function (path, texts) {
    sentences.set(path, texts);
    (wanting.get(path) || []).forEach(function (done) { done(texts); });
    wanting.delete(path);
  };

  /* Without accents and capitals, and in one spelling where English has two. */
  function plain(text) {
    return text.toLowerCase().normalize("NFD").replace(/\p{M}+/gu, "").replace(/œ/g, "oe").replace(/æ/g, "ae").replace(/\u0640/g, "")
      .replace(/ى/g, "ي").replace(/ة/g, "ه").replace(/colour/g, "color").replace(/\bmould/g, "mold").replace(/\bgrey/g, "gray");
  }

  function unpacked(packed) {
    var all = [], before = "", at = 0;
    while (at < packed.length) {
      var shared = packed.charCodeAt(at) - CAPITAL_A, end = at + 1;
      while (end < packed.length && !(packed[end] >= "A" && packed[end] <= "Z")) { end += 1; }
      before = before.slice(0, shared) + packed.slice(at + 1, end);
      all.push(before);
      at = end;
    }
    return all;
  }

  /* Words of the whole index, named by the step from one place to the next. */
  function placed(steps) {
    var place = 0;
    return Array.from(steps || "").reduce(function (found, sign) {
      var step = SIGNS.indexOf(sign);
      place += step;
      return step === SIGNS.length - 1 ? found : found.concat(shared[place]);
    }, []);
  }

  function wordsOf(text) {
    return plain(text).split(/[^\p{L}\p{N}]+/u).map(function (word) { return word.replace(/^[وبكف]?ال(?=.{3})/, ""); })
      .filter(function (word) { return word.length > 1; });
  }

  /* The words of a question without those that stand in any question, unless it has no others. */
  function asked(question) {
    var all = wordsOf(question), own = all.filter(function (word) { return !common.has(word); });
    return (own.length > 0 ? own : all).map(function (word) { return doubts.has(word) ? wordsOf(words.invented)[0] : word; });
  }

  /* Whether a word is a stem with an ending that is no longer than the stem itself; "wash" is no form of "was", nor "mold" of "mol". */
  function isForm(word, stem) {
    var ending = word.length - stem.length;
    return stem.length > 2 && word.startsWith(stem) && ending <= Math.min(LONGEST_ENDING, Math.max(3, stem.length))
      && !(stem.length === 3 && /^..([b-df-hj-np-tv-xz])(?!\1|s)[b-df-hj-np-tv-xz]/.test(word));
  }

  /* Titles count most, then headings and frequent words, then the rest. */
  function take(line) {
    var page = pages.push(line) - 1, weights = new Map();
    wordsOf(line.a || "").concat(placed(line.w), unpacked(line.y || "")).forEach(function (stem) { weights.set(stem, 1); });
    placed(line.s).concat(unpacked(line.x || "")).forEach(function (stem) { weights.set(stem, 3); });
    line.kind = window.BENCHLEAF_KINDS[line.k];
    var title = wordsOf(line.t + " " + line.kind.n);
    weights.forEach(function (weight, spelt) {
      var stem = plain(spelt);
      var named = title.some(function (word) { return isForm(word, stem); });
      if (!stems.has(stem)) { stems.set(stem, []); }
      stems.get(stem).push([page, named ? 9 : weight]);
    });
  }
  var common = new Set(wordsOf(words.common)), doubts = new Set(wordsOf(words.real));
  var shared = unpacked(window.BENCHLEAF_WORDS);
  function takeAll() {
    for (; lines < window.BENCHLEAF_INDEX.length; lines += 1) { take(window.BENCHLEAF_INDEX[lines]); }
  }

  function script(path, done) {
    var element = document.createElement("script");
    element.src = path;
    element.onload = element.onerror = done;
    document.head.appendChild(element);
  }

  /* Loads further files of the index until as many pages as are shown hold every word, or none is left. */
  function answer(question, done) {
    takeAll();
    var result = search(question);
    var whole = result.found.filter(function (sum) { return sum.words === result.asks.length; }).length;
    if (loaded >= window.BENCHLEAF_INDEX_FILES || whole >= MOST) { done(result); return; }
    loaded += 1;
    script(words.up + "assets/" + words.index.replace(".js", "-" + loaded + ".js"), function () { answer(question, done); });
  }

  /* Letters put in, left out, changed or swapped with the next one, up to a limit. */
  function apart(one, other, limit) {
    if (Math.abs(one.length - other.length) > limit) { return limit + 1; }
    var before = [], row = [];
    for (var j = 0; j <= other.length; j += 1) { row.push(j); }
    for (var i = 1; i <= one.length; i += 1) {
      var next = [i], least = i;
      for (j = 1; j <= other.length; j += 1) {
        var change = one[i - 1] === other[j - 1] ? 0 : 1;
        next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + change);
        if (i > 1 && j > 1 && one[i - 1] === other[j - 2] && one[i - 2] === other[j - 1]) {
          next[j] = Math.min(next[j], before[j - 2] + 1);
        }
        least = Math.min(least, next[j]);
      }
      if (least > limit) { return limit + 1; }
      before = row;
      row = next;
    }
    return row[other.length];
  }

  function holds(question, list) {
    var some = plain(list).split(" ");
    return plain(question).split(/[^\p{L}\p{N}]+/u).some(function (word) { return some.indexOf(word) >= 0; });
  }

  /* How well a stem fits a word, from 0 to 1: the word itself or one of its forms, its beginning, a slip. */
  function fit(word, stem, slips) {
    if (word === stem) { return 1; }
    if (isForm(word, stem)) {
      var ending = word.length - stem.length;
      return ending > USUAL_ENDING ? 0.8 - 0.1 * (ending - USUAL_ENDING) : 1 - 0.06 * ending;
    }
    if (word.length > 2 && stem.startsWith(word)) { return Math.max(0.5, 1 - 0.1 * (stem.length - word.length)); }
    if (!slips || word.length < 4) { return 0; }
    var limit = word.length > 7 ? 2 : 1;
    for (var cut = 0; cut <= LONGEST_OF_A_SLIP; cut += 1) {
      var root = word.slice(0, word.length - cut);
      if (root.length > 3 && root[0] === stem[0] && stem.length > 3) {
        var far = apart(root, stem, limit);
        if (far <= limit) { return 0.5 - 0.12 * far - 0.03 * cut; }
      }
    }
    return 0;
  }

  function fits(word) {
    var found = new Map();
    [false, true].some(function (slips) {
      stems.forEach(function (places, stem) {
        var how = fit(word, stem, slips);
        if (how > 0) { found.set(stem, how); }
      });
      return found.size > 0;
    });
    /* Who has typed nearly all of "letterpress" does not mean a letter. */
    var begun = Array.from(found.keys()).some(function (stem) {
      return stem.startsWith(word) && stem.length > word.length && stem.length - word.length < 3;
    });
    if (begun) {
      found.forEach(function (how, stem) { if (word.length - stem.length > USUAL_ENDING) { found.delete(stem); } });
    }
    return found;
  }

  function search(question) {
    var asks = asked(question).map(fits);
    var scores = new Map();
    asks.forEach(function (ask) {
      var best = new Map();
      ask.forEach(function (how, stem) {
        var places = stems.get(stem), rare = Math.log(1 + pages.length / places.length);
        places.forEach(function (place) {
          var score = how * how * place[1] * rare;
          if (score > (best.get(place[0]) || 0)) { best.set(place[0], score); }
        });
      });
      best.forEach(function (score, page) {
        var sum = scores.get(page) || { page: page, score: 0, words: 0 };
        sum.score += score;
        sum.words += 1;
        scores.set(page, sum);
      });
    });
    var all = Array.from(scores.values()), owner = holds(question, words.owner), real = holds(question, words.real);
    /* Who asks of "my letter" owns one, and reads first what an owner may do; whether all this is real, the front page tells. */
    all.forEach(function (sum) {
      sum.line = pages[sum.page];
      sum.score *= sum.line.kind.r * Math.pow(sum.words / asks.length, 3);
      if (plain(sum.line.t) === plain(question)) { sum.score *= 3; }
      if (owner && /at-home\.html$/.test(sum.line.h) || real && /^(\w\w\/)?index\.html$/.test(sum.line.h)) { sum.score *= 9; }
    });
    all.sort(function (a, b) { return b.score - a.score || a.page - b.page; });
    return { asks: asks, found: all.slice(0, ENOUGH) };
  }

  /* The sentence that holds most of the words: the first under a heading or question that holds them, else the shortest that is
     neither; and how near to each other they stand. */
  function nearest(texts, asks) {
    var best = { part: "", text: "", held: 0, short: true, answers: false }, asked = 0;
    texts.forEach(function (sentence) {
      var text = sentence[1], inside = wordsOf(text);
      var held = asks.filter(function (ask) {
        return inside.some(function (each) { return ask.has(each) || Array.from(ask.keys()).some(function (stem) { return isForm(each, stem); }); });
      }).length;
      var short = inside.length < SHORTEST_SENTENCE || /[?\u061f]$/.test(text), answers = !short && asked > 0 && asked >= held;
      var counted = answers ? asked : held;
      asked = short ? held : 0;
      if (counted > best.held || counted === best.held && counted > 0 && !best.answers
          && (answers || (short === best.short ? text.length < best.text.length : best.short))) {
        best = { part: sentence[0], text: text, held: counted, short: short, answers: answers };
      }
    });
    return best;
  }

  function withSentences(result, done) {
    var first = result.found.slice(0, WITH_SENTENCE), left = first.length;
    if (left === 0) { done(); return; }
    function ready(sum, texts) {
      var near = nearest(texts, result.asks), title = nearest([["", sum.line.t + " " + sum.line.kind.n]], result.asks);
      sum.text = near.text || texts.length > 0 && texts[0][1] || "";
      /* Who asks for a page by its title wants its beginning. */
      sum.part = title.held === result.asks.length ? "" : near.part;
      if (result.asks.length > 1 && Math.max(near.held, title.held) === result.asks.length) { sum.score *= 1.5; }
      left -= 1;
      if (left === 0) {
        first.sort(function (a, b) { return b.score - a.score || a.page - b.page; });
        result.found = first.concat(result.found.slice(WITH_SENTENCE));
        done();
      }
    }
    first.forEach(function (sum) {
      if (sum.line.a) { ready(sum, [["", sum.line.a]]); return; }
      var path = sum.line.h;
      if (sentences.has(path)) { ready(sum, sentences.get(path)); return; }
      var once = function (texts) {
        once = function () { return undefined; };
        ready(sum, texts);
      };
      wanting.set(path, (wanting.get(path) || []).concat(function (texts) { once(texts); }));
      script(words.up + path.replace(/\.html$/, "-sentences.js"), function () { once(sentences.get(path) || []); });
    });
  }

  function item(sum) {
    var element = document.createElement("li");
    var link = document.createElement("a");
    link.href = words.up + sum.line.h + (sum.part ? "#" + encodeURIComponent(sum.part) : "");
    link.textContent = sum.line.t;
    var kind = document.createElement("span");
    kind.className = "search-form__kind";
    kind.textContent = " " + sum.line.kind.n;
    element.appendChild(link);
    element.appendChild(kind);
    if (sum.text) {
      var about = document.createElement("p");
      about.textContent = sum.text;
      element.appendChild(about);
    }
    return element;
  }

  function show(question, found) {
    list.textContent = "";
    found.slice(0, MOST).forEach(function (sum) { list.appendChild(item(sum)); });
    list.hidden = found.length === 0;
    var said = found.length === 0 ? words.nothing : found.length === 1 ? words.foundOne : words.found;
    status.textContent = said.replace("[n]", String(Math.min(MOST, found.length))).replace("[q]", function () { return question; });
    form.dataset.answered = question;
    try { history.replaceState(null, "", "?q=" + encodeURIComponent(question)); } catch (refused) { return; }
  }

  function find() {
    var question = input.value.trim(), turn = turns += 1;
    if (question.length < 2) {
      list.textContent = "";
      list.hidden = true;
      status.textContent = "";
      return;
    }
    answer(question.slice(0, 64), function (result) {
      withSentences(result, function () {
        if (turn === turns) { show(question, result.found); }
      });
    });
  }
  input.addEventListener("input", function () {
    clearTimeout(waiting);
    waiting = setTimeout(find, 350);
  });
  form.addEventListener("submit", function (event) {
    event.preventDefault();
    clearTimeout(waiting);
    find();
  });
  var question = new URLSearchParams(location.search).get("q");
  if (question) { input.value = question; find(); }
}());
