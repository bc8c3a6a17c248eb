// Makes the bench livelier where scripts run; every page works without it.
(() => {
  "use strict";

  const news = document.getElementById("news");
  const main = () => document.getElementById("main");

  // The field gets the caret without scrolling past the cautions; touch screens keep their keyboard down until it is wanted.
  const focusFirst = () => {
    const first = main().querySelector("[data-focus='first']");
    if (first && matchMedia("(pointer: fine)").matches) first.focus({ preventScroll: true });
  };

  // A large photograph is drawn anew, smaller, before it leaves the device; what the camera noted beside it, such as the place, is not drawn.
  const mostPixels = 2400;
  const smaller = async (file) => {
    const picture = await createImageBitmap(file).catch(() => null);
    const scale = picture ? mostPixels / Math.max(picture.width, picture.height) : 1;
    if (scale >= 1) return file;
    const canvas = Object.assign(document.createElement("canvas"), { width: Math.round(picture.width * scale), height: Math.round(picture.height * scale) });
    canvas.getContext("2d").drawImage(picture, 0, 0, canvas.width, canvas.height);
    const drawn = await new Promise((done) => canvas.toBlob(done, "image/jpeg", 0.85));
    return drawn ? new File([drawn], file.name.replace(/\.[^.]*$/, ".jpg"), { type: "image/jpeg" }) : file;
  };

  // Refuses a photograph that is too large still before it is sent.
  document.addEventListener("change", async (event) => {
    const picker = event.target.closest("input[type='file'][data-most]");
    if (!picker) return;
    const files = new DataTransfer();
    for (const file of picker.files) files.items.add(await smaller(file));
    picker.files = files.files;
    const large = [...picker.files].some((file) => file.size > Number(picker.dataset.most));
    picker.setCustomValidity(large ? "This photograph is larger than 12 MB. Choose a smaller one." : "");
    picker.reportValidity();
  });

  const differs = (field, twin) => (field.type === "file" ? field.files.length > 0 : field.value !== twin.value);

  // Fields that hold something typed are moved as they are into the page that replaces this one.
  const keepTyped = (before, after) => {
    for (const form of before.querySelectorAll("form[data-form]")) {
      const twin = after.querySelector(`form[data-form="${form.dataset.form}"]`);
      if (!twin) continue;
      for (const field of form.querySelectorAll("input[name]:not([type='hidden']), textarea[name]")) {
        const place = twin.querySelector(`[name="${field.name}"]`);
        if (!place || !differs(field, place)) continue;
        place.replaceWith(field);
        for (let fold = field.closest("details"); fold; fold = fold.parentElement.closest("details")) fold.open = true;
      }
    }
  };

  const keepOpen = (before, after) => {
    for (const fold of before.querySelectorAll("details[data-fold][open]")) {
      const twin = after.querySelector(`details[data-fold="${fold.dataset.fold}"]`);
      if (twin) twin.open = true;
    }
  };

  const keepFocus = (swap) => {
    const held = document.activeElement;
    const id = held && main().contains(held) ? held.id : "";
    const range = id && held.type === "text" ? [held.selectionStart, held.selectionEnd] : null;
    swap();
    const again = id && document.getElementById(id);
    if (!again) return;
    again.focus({ preventScroll: true });
    if (range && again.type === "text") again.setSelectionRange(range[0], range[1]);
  };

  const refresh = async () => {
    const answer = await fetch(location.href, { headers: { Accept: "text/html" }, cache: "no-store" });
    if (!answer.ok) return;
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const after = page.getElementById("main");
    keepFocus(() => {
      keepOpen(main(), after);
      keepTyped(main(), after);
      main().replaceWith(document.adoptNode(after));
    });
    document.title = page.title;
    news.dataset.events = page.getElementById("news").dataset.events;
    document.dispatchEvent(new Event("refreshed"));
  };

  let stream = null;

  const watch = () => {
    if (!news.dataset.events || stream) return;
    stream = new EventSource(news.dataset.events);
    stream.addEventListener("watching", () => (news.dataset.watching = "yes"));
    stream.addEventListener("entered", async (event) => {
      await refresh();
      news.textContent = `Entry ${event.data} was just made in another window. This page shows it.`;
    });
  };

  // A page out of sight lets go of its connection, because a browser has few of them for one address.
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "visible") return watch();
    stream?.close();
    stream = null;
    delete news.dataset.watching;
  });

  // What is asked of a machine for the first time is computed, which takes seconds: then the page that still stands says so.
  const patience = 700;
  const mostPatience = 60_000;
  const busy = document.getElementById("busy");
  let timers = [];

  const answered = () => {
    timers.forEach(clearTimeout);
    timers = [];
    busy.textContent = "";
  };

  const waitForAnswer = () => {
    answered();
    timers = [setTimeout(() => (busy.textContent = busy.dataset.words), patience), setTimeout(answered, mostPatience)];
  };

  document.addEventListener("click", (event) => {
    const link = event.target.closest("a[href]");
    const isFile = link && /\.(pdf|csv|zip|json|svg|wav|txt|yaml|ics|stl|3mf)$/i.test(link.pathname);
    const isOther = link && (link.pathname !== location.pathname || link.search !== location.search);
    if (isOther && !isFile && link.origin === location.origin && event.button === 0 && !event.ctrlKey && !event.metaKey && !event.shiftKey) waitForAnswer();
  });
  document.addEventListener("submit", waitForAnswer);
  document.addEventListener("not sent", answered);
  window.addEventListener("pageshow", answered);

  focusFirst();
  watch();
})();
