// Keeps the next pages for a link that goes down, shows what is not yet recorded, and delivers it once, in order, when the link is back.
/* global waitingEntries */
(() => {
  "use strict";

  const panel = document.getElementById("waiting");
  if (!panel || !("serviceWorker" in navigator) || !("indexedDB" in window) || !("locks" in navigator)) return;

  const everySeconds = 5;
  const time = (moment) => new Date(moment).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
  const field = (entry, name) => entry.fields.find(([other]) => other === name)?.[1] ?? "";

  const make = (name, text, parts = []) => {
    const element = document.createElement(name);
    element.textContent = text;
    element.append(...parts);
    return element;
  };

  const said = (entry) => {
    switch (field(entry, "form")) {
      case "reading": return `Reading ${field(entry, "text")}`;
      case "skip": return `Left out: ${field(entry, "reason")}`;
      case "deviation": return `Noted: ${field(entry, "note")}`;
      default: return `Photograph ${field(entry, "caption")}`.trim();
    }
  };

  const sendAgain = async (entry) => {
    await waitingEntries.put({ ...entry, state: "waiting", why: [], seenRefusal: true });
    await deliver();
  };

  const discard = async (entry) => {
    if (!confirm(`${said(entry)}, at ${field(entry, "about")}: discard this entry for good? It is not in the record.`)) return;
    await waitingEntries.remove(entry.number);
    await showWaiting();
  };

  const item = (entry) => {
    const link = make("a", field(entry, "about") || "the check");
    link.href = entry.address;
    const line = make("p", `${said(entry)}, at `, [link, ` (${field(entry, "person")}, ${time(entry.when)})`]);
    if (entry.state !== "refused") return make("li", "", [line]);
    const again = make("button", "Send it again");
    again.type = "button";
    again.addEventListener("click", () => sendAgain(entry));
    const away = make("button", "Discard it");
    away.type = "button";
    away.className = "second";
    away.addEventListener("click", () => discard(entry));
    return make("li", "", [line, make("p", `Refused: ${entry.why.join(" ")}`), make("div", "", [again, away])]);
  };

  const nextKept = (entries) => {
    const waiting = new Set(entries.map((entry) => entry.address));
    return [...document.querySelectorAll("#ahead a")].find((link) => !waiting.has(link.getAttribute("href")));
  };

  const showWaiting = async () => {
    const entries = await waitingEntries.all();
    panel.hidden = entries.length === 0;
    const list = make("ol", "", entries.map(item));
    const parts = [make("h2", `Not yet recorded: ${entries.length}`), list,
      make("p", "Kept on this device and not judged yet. It is sent by itself, in this order, when the bench answers at this address. Connect no supply on the strength of it.")];
    const next = nextKept(entries);
    if (next && entries.some((entry) => entry.address === location.pathname)) {
      const on = make("a", "Next check ", [make("span", next.textContent)]);
      on.href = next.getAttribute("href");
      on.className = "button next";
      parts.push(make("p", "", [on]));
    }
    panel.replaceChildren(...parts);
  };

  // The old page's guard is not valid for ever, so each entry goes with that of a page just asked for.
  const freshGuard = async (address) => {
    const answer = await fetch(address, { headers: { Accept: "text/html" }, cache: "no-store" });
    if (!answer.ok) return { answer };
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    return { answer, guard: page.querySelector("input[name='__RequestVerificationToken']")?.value ?? "" };
  };

  const refusalIn = async (answer) => {
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const sentences = [...page.querySelectorAll(".problems li, main > .lead")].map((sentence) => sentence.textContent.trim());
    return sentences.length > 0 ? sentences : [`The bench answered ${answer.status}.`];
  };

  const refuse = async (entry, answer) => waitingEntries.put({ ...entry, state: "refused", why: await refusalIn(answer) });

  // Answers whether to go on with the next: a bench that cannot answer now is asked again later.
  const send = async (entry) => {
    const { answer: page, guard } = await freshGuard(entry.address);
    if (page.status >= 500) return false;
    if (!page.ok) {
      await refuse(entry, page);
      return true;
    }

    const body = new FormData();
    for (const [name, value] of entry.fields) {
      const text = name === "seen" && entry.seenRefusal ? "done" : value;
      if (!name.startsWith("__")) body.append(name, text);
    }
    body.append("__RequestVerificationToken", guard);
    const answer = await fetch(entry.address, { method: "POST", body, redirect: "manual" });
    if (answer.type === "opaqueredirect") {
      await waitingEntries.remove(entry.number);
      return true;
    }
    if (answer.status >= 500) return false;
    await refuse(entry, answer);
    return true;
  };

  // One window delivers at a time, so that the order holds.
  const deliver = () => navigator.locks.request("deliver", async () => {
    let sent = 0;
    try {
      for (const entry of (await waitingEntries.all()).filter((each) => each.state === "waiting")) {
        if (!(await send(entry))) break;
        sent++;
      }
    } catch {
      // The link is still down: what waits stays.
    }
    await showWaiting();
    if (sent > 0 && document.documentElement.dataset.kept !== undefined) location.reload();
  });

  // Keeps this page and those of the next checks, while there is a link.
  const keepAhead = async () => {
    if (document.documentElement.dataset.kept !== undefined) return;
    await navigator.serviceWorker.ready;
    const pages = await caches.open("pages");
    for (const link of document.querySelectorAll("#ahead a")) {
      const address = link.getAttribute("href");
      if (await pages.match(address, { ignoreVary: true })) continue;
      const answer = await fetch(address, { headers: { Accept: "text/html" }, cache: "no-store" });
      if (answer.ok) await pages.put(address, answer);
    }
    panel.dataset.ahead = "kept";
  };

  // A kept page may be behind the record: its forms get keys of their own, and its cautions and set-up stand open.
  const openKept = () => {
    const when = document.documentElement.dataset.kept;
    if (when === undefined) return;
    for (const key of document.querySelectorAll("input[name='key']")) key.value = crypto.randomUUID();
    for (const fold of document.querySelectorAll("details[data-fold='set-up']")) fold.open = true;
    document.querySelector(".caution-kept")?.classList.remove("caution-kept");
    const note = document.getElementById("kept-note");
    if (when) note.querySelector("time").textContent = `, kept at ${time(when)}`;
  };

  const tryLater = async () => {
    const entries = await waitingEntries.all();
    if (entries.some((entry) => entry.state === "waiting")) await deliver();
    else if (document.documentElement.dataset.kept !== undefined && (await fetch("/manifest.webmanifest", { cache: "no-store" }).catch(() => null))?.ok) location.reload();
  };

  // Only the page whose form did not get through says so; it stands as it was sent.
  let sent = false;
  document.addEventListener("submit", () => (sent = true));
  navigator.serviceWorker.addEventListener("message", (event) => {
    if (event.data !== "not sent" || !sent) return;
    sent = false;
    document.dispatchEvent(new Event("not sent"));
    const note = document.getElementById("lost-note");
    note.hidden = false;
    note.scrollIntoView({ block: "center" });
  });

  openKept();
  navigator.serviceWorker.register("/worker.js");
  window.addEventListener("online", deliver);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && deliver());
  setInterval(tryLater, everySeconds * 1000);
  deliver();
  keepAhead().catch(() => {});
})();
