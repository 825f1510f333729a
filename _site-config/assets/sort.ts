/** Lets a table be sorted by its columns. Without this script the table stands as it is, whole. */

import { language } from "./language.ts";
import { sortWords as told } from "./script-words.ts";

type Direction = "ascending" | "descending";

/** Made once: a table of a thousand rows compares ten thousand times. */
const words = new Intl.Collator(language, { numeric: true });

/** Absent values come last in both directions: absence is neither small nor large. */
function compareCells(a: string, b: string, kind: string, direction: Direction): number {
  if (a === "" || b === "") return Number(a === "") - Number(b === "");
  const order = kind === "number" ? Number(a) - Number(b) : words.compare(a, b);
  return direction === "ascending" ? order : -order;
}

/** True where two values cannot be told apart, because their intervals overlap; one end alone leaves the other open. */
function overlap(a: HTMLElement, b: HTMLElement): boolean {
  const [ofA, ofB] = [a, b].map(({ dataset: { value, low, high } }) =>
    !value || !(low || high) ? undefined : [low ? Number(low) : -Infinity, high ? Number(high) : Infinity],
  ) as [[number, number] | undefined, [number, number] | undefined];
  return ofA !== undefined && ofB !== undefined && ofA[0] <= ofB[1] && ofB[0] <= ofA[1];
}

function sortTable(table: HTMLTableElement, heading: HTMLTableCellElement, status: HTMLElement): void {
  const direction: Direction = heading.getAttribute("aria-sort") === "ascending" ? "descending" : "ascending";
  const column = heading.cellIndex;
  const body = table.tBodies[0];
  if (body === undefined) return;
  const sorted = [...body.rows]
    .map((row) => ({ row, cell: row.cells[column], value: row.cells[column]?.dataset.value ?? "" }))
    .sort((a, b) => compareCells(a.value, b.value, heading.dataset.sort ?? "text", direction));

  for (const tied of body.querySelectorAll(".tie")) tied.classList.remove("tie");
  sorted.forEach(({ cell }, index) => {
    const above = sorted[index - 1]?.cell;
    if (cell && above && overlap(cell, above)) cell.classList.add("tie");
  });
  body.append(...sorted.map(({ row }) => row));

  for (const other of table.querySelectorAll("th[aria-sort]")) other.removeAttribute("aria-sort");
  heading.setAttribute("aria-sort", direction);
  const ties = body.querySelectorAll(".tie").length;
  const tied = ties === 0 ? "" : told.ties(ties);
  table.dispatchEvent(new Event("sorted"));
  status.textContent = `${told.sorted(heading.textContent ?? "", told.directions[direction])}${tied}`;
}

for (const table of document.querySelectorAll<HTMLTableElement>("table[data-sortable]")) {
  const status = document.createElement("p");
  status.className = "unseen";
  status.setAttribute("role", "status");
  table.parentElement?.after(status);
  for (const heading of table.querySelectorAll<HTMLTableCellElement>("th[data-sort]")) {
    const button = document.createElement("button");
    button.type = "button";
    button.append(...heading.childNodes);
    button.addEventListener("click", () => sortTable(table, heading, status));
    heading.append(button);
  }
}
