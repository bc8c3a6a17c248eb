// Entries that wait on this device until the link is back. Worker and page share it; the store keeps them in the order in which they were made.
"use strict";
self.waitingEntries = (() => {
  const open = () => new Promise((opened, failed) => {
    const ask = indexedDB.open("bench", 1);
    ask.onupgradeneeded = () => ask.result.createObjectStore("entries", { keyPath: "number", autoIncrement: true });
    ask.onsuccess = () => opened(ask.result);
    ask.onerror = () => failed(ask.error);
  });

  const run = async (mode, work) => {
    const store = await open();
    try {
      return await new Promise((done, failed) => {
        const transaction = store.transaction("entries", mode, { durability: "strict" });
        const ask = work(transaction.objectStore("entries"));
        transaction.oncomplete = () => done(ask.result);
        transaction.onabort = () => failed(transaction.error);
      });
    } finally {
      store.close();
    }
  };

  return {
    all: () => run("readonly", (entries) => entries.getAll()),
    add: (entry) => run("readwrite", (entries) => entries.add(entry)),
    put: (entry) => run("readwrite", (entries) => entries.put(entry)),
    remove: (number) => run("readwrite", (entries) => entries.delete(number)),
  };
})();
