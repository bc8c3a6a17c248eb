// Keeps the pages of checks readable while the link to the bench is down, and holds what is entered meanwhile. It talks to its own origin only.
/* global waitingEntries, bench */
"use strict";

const shelf = `shell-${bench.version}`;
const shelfOfPages = "pages";
const mostPages = 60;
const heldForms = ["reading", "skip", "deviation", "photo"];

const isCheck = (url) => /^\/builds\/[^/]+\/checks\/[^/]+$/.test(url.pathname);

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(shelf).then((files) => files.addAll(bench.shell)).then(() => self.skipWaiting()));
});

// Pages that an earlier version kept ask for its stylesheet, so they go with it. What waits to be recorded stays.
self.addEventListener("activate", (event) => {
  event.waitUntil((async () => {
    const old = (await caches.keys()).filter((name) => name.startsWith("shell-") && name !== shelf);
    await Promise.all(old.map((name) => caches.delete(name)));
    if (old.length > 0) await caches.delete(shelfOfPages);
    await self.clients.claim();
  })());
});

const keepPage = async (address, answer) => {
  const pages = await caches.open(shelfOfPages);
  await pages.put(address, answer);
  const kept = await pages.keys();
  await Promise.all(kept.slice(0, Math.max(0, kept.length - mostPages)).map((page) => pages.delete(page)));
};

// The mark tells page and stylesheet that this copy may be behind the record.
const marked = async (kept, mark) => {
  const text = await kept.text();
  return new Response(text.replace("<html ", `<html ${mark} `), { status: kept.status, headers: kept.headers });
};

const offlinePage = async () => {
  const page = await caches.match(bench.offline, { ignoreVary: true });
  return page ? marked(page, "data-kept") : Response.error();
};

const show = async (event, url) => {
  try {
    const answer = await fetch(event.request);
    if (answer.ok && isCheck(url)) event.waitUntil(keepPage(url.pathname, answer.clone()));
    return answer;
  } catch {
    const kept = await (await caches.open(shelfOfPages)).match(url.pathname, { ignoreVary: true });
    const when = Date.parse(kept?.headers.get("Date") ?? "");
    return kept ? marked(kept, `data-kept="${Number.isNaN(when) ? "" : new Date(when).toISOString()}"`) : offlinePage();
  }
};

const fieldOf = (fields, name) => fields.find(([field]) => field === name)?.[1] ?? "";

const sameFields = (one, other) => {
  const said = (fields) => JSON.stringify(fields.filter(([name]) => !name.startsWith("__")).map(([name, value]) => [name, value instanceof Blob ? [value.name, value.size] : value]));
  return said(one) === said(other);
};

// A second tap on the same button is one entry; the same form with something else in it is another.
const hold = async (address, fields) => {
  const twin = (await waitingEntries.all()).find((entry) => fieldOf(entry.fields, "key") === fieldOf(fields, "key"));
  if (twin && sameFields(twin.fields, fields)) return;
  const own = twin ? fields.map(([name, value]) => (name === "key" ? [name, crypto.randomUUID()] : [name, value])) : fields;
  await waitingEntries.add({ address, fields: own, when: Date.now(), state: "waiting", why: [] });
};

// No content: the browser stays on the page that sent the form (RFC 9110, 204), with what was typed, and that page is told.
const notSent = async () => {
  for (const window of await self.clients.matchAll({ type: "window" })) window.postMessage("not sent");
  return new Response(null, { status: 204 });
};

const enter = async (event, url) => {
  const copy = event.request.clone();
  try {
    return await fetch(event.request);
  } catch {
    try {
      const fields = [...(await copy.formData())];
      if (!heldForms.includes(fieldOf(fields, "form"))) return notSent();
      await hold(url.pathname, fields);
    } catch {
      return notSent();
    }
    return Response.redirect(`${url.pathname}#waiting`, 303);
  }
};

self.addEventListener("fetch", (event) => {
  const url = new URL(event.request.url);
  if (url.origin !== self.location.origin) return;
  if (event.request.method === "GET" && url.pathname.startsWith("/assets/"))
    event.respondWith(caches.match(event.request, { ignoreVary: true }).then((kept) => kept ?? fetch(event.request)));
  else if (event.request.mode === "navigate" && event.request.method === "GET")
    event.respondWith(show(event, url));
  else if (event.request.mode === "navigate" && event.request.method === "POST" && isCheck(url))
    event.respondWith(enter(event, url));
  else if (event.request.mode === "navigate" && event.request.method === "POST") {
    // Whoever uses the device next sees no page of the record. What waits to be recorded stays: nothing entered is ever lost.
    if (url.pathname === bench.signOut) event.waitUntil(caches.delete(shelfOfPages));
    event.respondWith(fetch(event.request).catch(notSent));
  }
});
