// Both hands hold probes: keeps the screen on, reads the step out, takes keys without focus and, where it is switched on, a spoken reading.
(() => {
  "use strict";

  const byId = (id) => document.getElementById(id);
  const settings = ["read-always", "keys-anywhere", "voice"];
  const Recognition = window.SpeechRecognition ?? window.webkitSpeechRecognition;

  // The screen stays on while a check is in sight (W3C Screen Wake Lock); the browser lets go by itself when the page is hidden.
  let lock = null;
  const stayAwake = async () => {
    if (!("wakeLock" in navigator) || document.visibilityState !== "visible" || (lock && !lock.released)) return;
    lock = await navigator.wakeLock.request("screen").catch(() => null);
  };

  const isOn = (setting) => {
    try {
      return localStorage.getItem(setting) === "on";
    } catch {
      return false;
    }
  };

  const turn = (setting, on) => {
    try {
      localStorage.setItem(setting, on ? "on" : "off");
    } catch {
      // A browser that keeps nothing asks again on the next page.
    }
  };

  const say = (text) => (byId("hands-said").textContent = text);

  // Cautions first, as on the page; then the set-up, what to do, the meter and what it should read.
  const words = () => ["#main .caution p", "#main .set-up h2", "#main .set-up li", "#main .step h1", "#main .verdict h1", "#main .verdict > p:not(.quiet)", "#main .step .lead", "#main .step .leads", "#main .reads dt, #main .reads dd"]
    .filter((place) => !byId("hands").dataset.done || /caution|verdict/.test(place))
    .flatMap((place) => [...document.querySelectorAll(place)])
    .map((element) => element.textContent.replace(/\s+/g, " ").replaceAll("Ω", "ohm").trim());

  const readOut = () => {
    speechSynthesis.cancel();
    for (const text of words()) {
      const spoken = new SpeechSynthesisUtterance(text);
      spoken.lang = "en";
      speechSynthesis.speak(spoken);
    }
  };

  const fill = (text) => {
    const field = byId("reading-text");
    if (!field) return;
    field.value = text;
    field.focus({ preventScroll: true });
  };

  // The bench makes a reading of what was heard; the person looks at it and enters it.
  const understand = async (heard) => {
    const unit = byId("hands").dataset.unit;
    const answer = await fetch(`/heard?${new URLSearchParams({ text: heard, unit })}`).catch(() => null);
    const reading = answer?.ok ? (await answer.json()).reading : null;
    if (!reading) return say(`Heard: ${heard}. That is no reading. Say it again, or type it.`);
    fill(reading);
    say(`Heard: ${heard}. Understood: ${reading}. Press Enter when that is what the meter shows.`);
  };

  const listen = () => {
    const ear = new Recognition();
    ear.lang = "en";
    ear.maxAlternatives = 1;
    ear.addEventListener("result", (event) => understand(event.results[0][0].transcript));
    ear.addEventListener("error", () => say("Nothing was heard. Say it again, or type it."));
    ear.start();
    say("Listening.");
  };

  const typesElsewhere = (target) => target.closest("input, textarea, select, [contenteditable]") !== null;

  const follow = (link) => {
    if (!link) return false;
    link.click();
    return true;
  };

  const typeInto = (field, key) => {
    field.focus({ preventScroll: true });
    field.setRangeText(key, field.selectionStart, field.selectionEnd, "end");
  };

  const press = (event) => {
    if (!isOn("keys-anywhere") || event.ctrlKey || event.altKey || event.metaKey || event.isComposing) return;
    const field = byId("reading-text");
    if (event.key === "PageDown" && follow(document.querySelector("#main .ways .next"))) return event.preventDefault();
    if (event.key === "PageUp" && follow(document.querySelector("#main .side .back"))) return event.preventDefault();
    if (!field || typesElsewhere(event.target) || byId("hands").dataset.done) return;
    if (/^[0-9.,\-kKmMROLµΩ]$/.test(event.key)) {
      typeInto(field, event.key);
      event.preventDefault();
    } else if (event.key === "Enter" && event.target.closest("a, button, summary") === null && field.value.trim().length > 0) {
      field.form.requestSubmit();
      event.preventDefault();
    }
  };

  const prepare = () => {
    const hands = byId("hands");
    if (!hands) return;
    hands.hidden = false;
    for (const setting of settings) byId(setting).checked = isOn(setting);
    const canSpeak = "speechSynthesis" in window;
    byId("read-out").hidden = !canSpeak;
    byId("read-always").disabled = !canSpeak;
    byId("voice").disabled = !Recognition || hands.dataset.unit === "";
    byId("listen").hidden = !Recognition || hands.dataset.unit === "" || !isOn("voice");
  };

  document.addEventListener("change", (event) => {
    if (!settings.includes(event.target.id)) return;
    turn(event.target.id, event.target.checked);
    prepare();
  });

  document.addEventListener("click", (event) => {
    if (event.target.id === "read-out") readOut();
    else if (event.target.id === "listen") listen();
  });

  document.addEventListener("keydown", press);
  document.addEventListener("refreshed", prepare);
  document.addEventListener("visibilitychange", stayAwake);
  prepare();
  stayAwake();
  if (isOn("read-always") && "speechSynthesis" in window) readOut();
})();
