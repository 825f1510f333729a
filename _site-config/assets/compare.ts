/**
 * Narrows the comparison, chooses its columns and its order, and chargers to lay side by side, and keeps all of that in the address.
 * Without it the whole table stands.
 */
import { compareWords as words } from "./script-words.ts";

const form = document.querySelector<HTMLFormElement>("form[data-facets]");
const table = document.querySelector<HTMLTableElement>("table.comparison");

/** As lib/publish/side-by-side/compared.ts has them; this script stays small without that module. */
const fewestSideBySide = 2;
const mostSideBySide = 4;

if (form !== null && table !== null) setUp(form, table);

function setUp(form: HTMLFormElement, table: HTMLTableElement): void {
  const rows = [...table.querySelectorAll<HTMLTableRowElement>("tbody tr")];
  const facetsOfRow = new Map(rows.map((row) => [row, new Set((row.dataset.facets ?? "").split(" "))]));
  const boxes = [...form.querySelectorAll<HTMLInputElement>("input[type=checkbox]")];
  const facetBoxes = boxes.filter((box) => box.name !== "column");
  const columnBoxes = boxes.filter((box) => box.name === "column");
  const shown = form.querySelector<HTMLElement>("[data-shown]");
  const facets = [...new Set(facetBoxes.map((box) => box.name))];
  const withoutColumns = new Set<string>();
  const choosing = offerChoosing(table, () => history.replaceState(null, "", address()));
  offerSorting(form, table);

  const showing = showFirstRows(table);

  const chosen = (facet: string): string[] =>
    facetBoxes.filter((box) => box.name === facet && box.checked).map((box) => `${facet}:${box.value}`);

  function apply(): void {
    const wanted = facets.map((facet) => ({ facet, choices: chosen(facet) })).filter(({ choices }) => choices.length > 0);
    /** Within a facet any choice will do; between facets all must fit. `except` leaves one facet out, for its own counts. */
    const fits = (row: HTMLTableRowElement, except?: string): boolean =>
      wanted.every(({ facet, choices }) => facet === except || choices.some((word) => facetsOfRow.get(row)?.has(word) === true));
    const visible = rows.filter((row) => {
      const isIn = fits(row);
      if (row.hidden === isIn) row.hidden = !isIn;
      return isIn;
    });
    const fitting = new Map(facets.map((facet) => [facet, rows.filter((row) => fits(row, facet))]));
    for (const box of facetBoxes) {
      const count = (fitting.get(box.name) ?? []).filter((row) => facetsOfRow.get(row)?.has(`${box.name}:${box.value}`) === true).length;
      const told = box.parentElement?.querySelector(".count");
      if (told) told.textContent = String(count);
      // A choice that would leave nothing is not offered, unless it is what the reader has chosen.
      box.disabled = count === 0 && !box.checked;
    }
    for (const box of columnBoxes) {
      if (box.checked === !withoutColumns.has(box.value)) continue;
      if (box.checked) withoutColumns.delete(box.value);
      else withoutColumns.add(box.value);
      for (const cell of table.querySelectorAll<HTMLElement>(`[data-column="${CSS.escape(box.value)}"]`)) cell.hidden = !box.checked;
    }
    showing.again();
    if (shown) shown.textContent = words.shown(visible.length, rows.length);
  }

  /** The address holds what differs from the default: facets by name, hidden columns, chosen chargers, the order. */
  function address(): URL {
    const url = new URL(location.href);
    const query = new URLSearchParams();
    for (const facet of facets) for (const word of chosen(facet)) query.append(facet, word.slice(facet.length + 1));
    for (const box of columnBoxes) if (!box.checked) query.append("without", box.value);
    const sorted = table.querySelector<HTMLElement>("th[aria-sort]");
    const column = sorted?.dataset.column ?? (sorted === null ? undefined : "charger");
    for (const id of choosing.chosen()) query.append("charger", id);
    if (column !== undefined) query.append("sort", `${column}-${sorted?.getAttribute("aria-sort") === "descending" ? "down" : "up"}`);
    url.search = query.toString();
    url.hash = "";
    return url;
  }

  function restore(): void {
    const query = new URLSearchParams(location.search);
    for (const box of facetBoxes) box.checked = query.getAll(box.name).includes(box.value);
    for (const box of columnBoxes) box.checked = !query.getAll("without").includes(box.value);
    choosing.restore(query.getAll("charger"));
    apply();
    const [, column, way] = /^(.+)-(up|down)$/.exec(query.get("sort") ?? "") ?? [];
    if (column === undefined) return;
    const button = sortButton(table, column);
    const heading = button?.closest("th");
    const wanted = way === "down" ? "descending" : "ascending";
    for (let tries = 0; tries < 2 && heading?.getAttribute("aria-sort") !== wanted; tries++) button?.click();
  }

  form.addEventListener("change", () => {
    apply();
    history.pushState(null, "", address());
  });
  form.addEventListener("reset", () => {
    // The boxes change after the event.
    setTimeout(() => {
      for (const box of facetBoxes) box.checked = false;
      for (const box of columnBoxes) box.checked = true;
      choosing.restore([]);
      apply();
      history.pushState(null, "", address());
    });
  });
  table.addEventListener("sorted", () => {
    showing.again();
    history.replaceState(null, "", address());
  });
  form.querySelector("[data-copy]")?.addEventListener("click", (event) => {
    const button = event.currentTarget as HTMLButtonElement;
    navigator.clipboard.writeText(address().href).then(
      () => {
        button.textContent = words.copied;
      },
      () => {
        button.textContent = address().href;
      },
    );
  });
  addEventListener("popstate", restore);
  form.hidden = false;
  restore();
}

/**
 * Shows the first rows of a long table, and offers the others: a browser takes seconds to lay a thousand rows out anew after each choice.
 * Rows that do not fit what was chosen do not count. On paper, and without this script, all rows stand.
 */
function showFirstRows(table: HTMLTableElement) {
  const atFirst = 50;
  const body = table.tBodies[0];
  const offer = document.createElement("p");
  const more = document.createElement("button");
  const all = document.createElement("button");
  for (const button of [more, all]) button.type = "button";
  offer.append(more, " ", all);
  offer.hidden = true;
  (table.closest("section") ?? table).after(offer);
  let most = atFirst;

  function again(): void {
    let fitting = 0;
    for (const row of body?.rows ?? []) {
      const isBeyond = !row.hidden && fitting >= most;
      if (!row.hidden) fitting++;
      if (row.classList.contains("beyond") !== isBeyond) row.classList.toggle("beyond", isBeyond);
    }
    offer.hidden = fitting <= most;
    more.textContent = words.showMore(Math.min(atFirst, fitting - most));
    all.textContent = words.showAll(fitting);
    // Until here the style sheet has kept the later rows from being laid out at all.
    table.classList.add("paged");
  }

  more.addEventListener("click", () => {
    most += atFirst;
    again();
  });
  all.addEventListener("click", () => {
    most = Number.POSITIVE_INFINITY;
    again();
  });
  return { again };
}

/** The button in the heading of a column; sort.ts has put it there. */
function sortButton(table: HTMLTableElement, column: string): HTMLButtonElement | null {
  const heading = column === "charger" ? "th[data-sort]" : `th[data-column="${CSS.escape(column)}"][data-sort]`;
  return table.querySelector<HTMLButtonElement>(`${heading} button`);
}

/** Sorts by a list of columns, since headings have no room on a narrow screen. It presses their buttons, so there is one way of sorting only. */
function offerSorting(form: HTMLFormElement, table: HTMLTableElement): void {
  const choice = form.querySelector<HTMLSelectElement>("[data-sort-choice]");
  if (choice === null) return;
  const sort = () => sortButton(table, choice.value)?.click();
  const follow = () => {
    choice.value = table.querySelector<HTMLElement>("th[aria-sort]")?.dataset.column ?? "charger";
  };
  choice.addEventListener("change", (event) => {
    // The form takes a change for a narrowing, which would stand in the history a second time.
    event.stopPropagation();
    sort();
  });
  form.querySelector("[data-sort-turn]")?.addEventListener("click", () => {
    // Rows stand by name from the start, though no heading says so yet.
    if (table.querySelector("th[aria-sort]") === null) sort();
    sort();
  });
  form.addEventListener("reset", () => setTimeout(follow));
  table.addEventListener("sorted", follow);
}

/**
 * Offers a box in each row, and a link to the chosen chargers side by side: two to four of them, whether or not their rows are shown.
 * @param changed called after a reader has changed the choice
 */
function offerChoosing(table: HTMLTableElement, changed: () => void) {
  const labels = [...table.querySelectorAll<HTMLLabelElement>("[data-choose]")];
  const boxes = labels.flatMap((label) => [...label.querySelectorAll("input")]);
  const told = document.createElement("p");
  told.className = "chosen";
  told.setAttribute("role", "status");
  // Below the table it sticks to the window's lower edge for as long as rows are in sight.
  (table.closest("section") ?? table).after(told);
  const chosen = (): string[] => boxes.filter((box) => box.checked).map((box) => box.value);

  function show(): void {
    const ids = chosen();
    for (const box of boxes) box.disabled = ids.length >= mostSideBySide && !box.checked;
    if (ids.length < fewestSideBySide) {
      told.textContent = ids.length === 0 ? "" : words.chooseAnother;
      return;
    }
    const link = document.createElement("a");
    link.href = `compare/index.html?${new URLSearchParams(ids.map((id) => ["charger", id]))}`;
    link.textContent = words.chosen(ids.length);
    told.replaceChildren(link, ids.length === mostSideBySide ? words.noMore : "");
  }

  for (const label of labels) label.hidden = false;
  for (const box of boxes)
    box.addEventListener("change", () => {
      show();
      changed();
    });
  return {
    chosen,
    restore(ids: readonly string[]): void {
      for (const box of boxes) box.checked = ids.includes(box.value);
      show();
    },
  };
}
