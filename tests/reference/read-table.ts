/** Reads the reference tables that lie beside this file. */
import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";

/** Text of a file under tests/reference. Throws where it is absent: a check without its table must not pass. */
export function readReference(path: string): string {
  return readFileSync(new URL(path, import.meta.url), "utf8");
}

/** Rows of a CSV under tests/reference, as texts by heading. */
export function readReferenceTable(path: string): Record<string, string>[] {
  return parse(readReference(path), { columns: true, skip_empty_lines: true });
}

/** The text of a named field; throws where the table has no such heading. */
export function field(row: Record<string, string>, name: string): string {
  const value = row[name];
  if (value === undefined) throw new Error(`the table has no column ${name}`);
  return value;
}

/** The number in a named field; throws where it is none. */
export function numberField(row: Record<string, string>, name: string): number {
  const value = Number(field(row, name));
  if (!Number.isFinite(value)) throw new Error(`${name} is not a number: ${field(row, name)}`);
  return value;
}
