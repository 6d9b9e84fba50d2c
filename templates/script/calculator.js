/* Loads the calculations, once, when the first sum is asked for. They are the program's own, compiled for browsers. They answer in
   the language of the page. */
(function () {
  "use strict";
  var here = document.currentScript.src.replace(/[^/]*$/, "");
  var loading = null;
  var calculator = {};
  function script(address) {
    return new Promise(function (done, failed) {
      var element = document.createElement("script");
      element.onload = done;
      element.onerror = failed;
      element.src = address;
      document.head.appendChild(element);
    });
  }
  /* The compiled script puts its functions on "exports". It is read once, even if what is read after it must be fetched again. */
  function calculations() {
    if (!loading) {
      loading = script(here + "sums-data.js").then(function () {
        window.exports = calculator;
        return calculator.load || script(here + "calculations.js");
      }).then(function () {
        delete window.exports;
        var own = window.BENCHLEAF_SUMS.others[document.documentElement.lang];
        return own && script(here + own);
      }).then(function () {
        var data = window.BENCHLEAF_SUMS, speaks = data.speaks;
        calculator.load(data.formulary, speaks.mark, speaks.weeks, speaks.words, speaks.direction);
        return calculator;
      });
      loading.catch(function () { loading = null; });
    }
    return loading;
  }
  window.benchleafSums = { script: script, calculations: calculations };
}());
