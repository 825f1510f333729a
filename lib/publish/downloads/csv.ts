/** CSV as our downloads write it: UTF-8, comma, point, one line feed a row, and nothing that a spreadsheet would run. */

/** A cell: text, a number, or nothing. */
export type Cell = string | number | null;

/** Characters at which a spreadsheet starts to read a formula (CWE-1236; OWASP ASVS 1.2.10). */
const startsFormula = /^[=+\-@\t\r\0]/;

/**
 * Writes rows as CSV text that ends in a line feed.
 * Text that could start a formula gets a leading apostrophe; numbers never do, since a current may be negative.
 * null becomes an empty cell; a number that is not finite throws, because results hold none.
 */
export function writeCsv(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(writeCell).join(",")}\n`).join("");
}

function writeCell(cell: Cell): string {
  if (cell === null) return "";
  if (typeof cell === "number") {
    if (!Number.isFinite(cell)) throw new Error(`a CSV cell must be a finite number, found ${cell}`);
    return String(cell);
  }
  const safe = startsFormula.test(cell) ? `'${cell}` : cell;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}
