/**
 * A sheet as text: one line a row, tabs between cells, numbers with a point, dates as ISO. From here on a spreadsheet is read as any
 * other log; its line and column are the sheet's row and column.
 */

/** A cell by its column, counted from 0. */
export type Cell = { readonly column: number; readonly text: string };

/** More rows or columns than spreadsheets have. */
export const mostRows = 1_048_576;
export const mostColumns = 16_384;

/** A row's line; text that holds a tab or a line break has blanks in their place. */
export function lineOfCells(cells: readonly Cell[]): string {
  const fields: string[] = [];
  for (const { column, text } of cells) {
    while (fields.length < column) fields.push("");
    fields[column] = text.replace(/[\t\r\n]+/g, " ").replaceAll('"', "'");
  }
  return fields.join("\t");
}

/** Date and time of a spreadsheet's serial number, to the millisecond; a number below 1 is a time of day. */
export function textOfSerial(days: number, is1904: boolean): string {
  const ms = Math.round((days - 25_569 + (is1904 ? 1462 : 0)) * 86_400_000);
  if (!Number.isFinite(ms) || Math.abs(ms) > 8e15) return String(days);
  if (days >= 0 && days < 1) return textOfDuration(days);
  const text = new Date(ms).toISOString().replace("T", " ").replace("Z", "");
  return text.endsWith(".000") ? text.slice(0, -4) : text;
}

/** A duration in days as h:mm:ss, with thousandths where there are any. */
export function textOfDuration(days: number): string {
  const ms = Math.round(days * 86_400_000);
  const seconds = Math.floor(ms / 1000);
  const two = (value: number): string => String(value).padStart(2, "0");
  const fraction = ms % 1000 === 0 ? "" : `.${String(ms % 1000).padStart(3, "0")}`;
  return `${two(Math.floor(seconds / 3600))}:${two(Math.floor(seconds / 60) % 60)}:${two(seconds % 60)}${fraction}`;
}
