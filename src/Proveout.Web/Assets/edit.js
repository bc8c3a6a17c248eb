// Makes the editor livelier where scripts run; every page works without it.
const filterOf = (field) => {
  const rows = [...document.querySelectorAll(`#${field.dataset.filter} tbody tr`)];
  const words = new Map(rows.map((row) => [row, row.textContent.toLowerCase()]));
  field.addEventListener("input", () => {
    const wanted = field.value.trim().toLowerCase();
    for (const row of rows) row.hidden = !words.get(row).includes(wanted);
  });
};

document.querySelectorAll("input[data-filter]").forEach(filterOf);

// What was typed and not saved is not left by a slip of the thumb.
for (const form of document.querySelectorAll("form[data-form='row'], form[data-form='file']")) {
  const start = new FormData(form);
  let sent = false;
  form.addEventListener("submit", () => (sent = true));
  addEventListener("beforeunload", (event) => {
    const now = new FormData(form);
    if (!sent && [...now].some(([name, text]) => start.get(name) !== text)) event.preventDefault();
  });
}

// The second end of a conductor without a page between: the terminals of the other part are fetched in place.
const main = () => document.getElementById("main");

document.addEventListener("click", async (event) => {
  const link = event.target.closest("a");
  if (!link || !main().querySelector("[data-terminals]") || event.ctrlKey || event.metaKey || event.shiftKey) return;
  const address = new URL(link.getAttribute("href"), location.href);
  if (address.pathname !== location.pathname) return;
  event.preventDefault();
  const answer = await fetch(address, { headers: { Accept: "text/html" } });
  if (!answer.ok) return location.assign(address);
  const page = new DOMParser().parseFromString(await answer.text(), "text/html");
  main().replaceWith(document.adoptNode(page.getElementById("main")));
  document.title = page.title;
  history.pushState(null, "", address);
  document.getElementById(address.hash.slice(1))?.scrollIntoView();
});

addEventListener("popstate", () => location.reload());
