"use strict";
// Finds the places that hold all words, or words that begin so. The data is a script beside this one, so that it works from a memory stick.
(function () {
  var form = document.getElementById("search");
  var field = document.getElementById("words");
  var count = document.getElementById("count");
  var list = document.getElementById("found");
  var mostShown = 60;

  function wordsOf(text) {
    return text.normalize("NFC").toLowerCase().match(/[\p{L}\p{Nd}]+/gu) || [];
  }

  function placesOf(start) {
    var places = new Set();
    bookWords.forEach(function (entry) {
      if (entry[0].startsWith(start)) entry[1].forEach(function (place) { places.add(place); });
    });
    return places;
  }

  function show() {
    var words = wordsOf(field.value);
    list.replaceChildren();
    if (words.length === 0) { count.textContent = ""; return; }
    var sets = words.map(placesOf);
    var found = Array.from(sets[0]).filter(function (place) { return sets.every(function (set) { return set.has(place); }); });
    found.sort(function (a, b) { return a - b; });
    count.textContent = found.length === 0 ? "No place holds all of these words." : found.length === 1 ? "1 place." : found.length + " places.";
    found.slice(0, mostShown).forEach(function (place) {
      var link = document.createElement("a");
      link.href = bookPlaces[place][1];
      link.textContent = bookPlaces[place][0];
      list.appendChild(document.createElement("li")).appendChild(link);
    });
  }

  form.hidden = false;
  form.addEventListener("submit", function (event) { event.preventDefault(); show(); });
  field.addEventListener("input", show);
  show();
})();
