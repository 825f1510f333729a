/** Puts a dialect into a recorder's record, and leaves every other byte of it as it stands. */
import { Document } from "yaml";
import { type Dialect, instrument } from "../nouns/instrument.ts";
import type { Checked } from "../nouns/problem.ts";
import { readRecord } from "./record.ts";

/** The block as it stands in a record, each line ended by `lineEnd`. */
export function dialectBlock(dialect: Dialect, lineEnd = "\n"): string {
  const document = new Document({ dialect });
  for (const key of Object.keys(dialect)) {
    const node = document.getIn(["dialect", key], true) as { flow?: boolean } | undefined;
    // One line a column, as a person would write it.
    if (typeof node === "object" && node !== null && "items" in node) node.flow = true;
  }
  return document.toString({ lineWidth: 0, flowCollectionPadding: true }).replaceAll("\n", lineEnd);
}

/**
 * A record's text with the dialect added at its end.
 *
 * @param text  the record as it stands
 * @param file  for messages
 * @returns the new text, which differs from the old one only by what is added; or the problem that kept it from being added: the record
 * has a dialect already, is faulty, or is written in a way to which nothing can be added at the end
 */
export function withDialect(text: string, file: string, dialect: Dialect): Checked<string | undefined> {
  const before = readRecord(text, file, instrument);
  if (before.value === undefined) return { value: undefined, problems: before.problems };
  if (before.value.value.dialect !== undefined) {
    const place = before.value.placeOf(["dialect"]);
    return refuse(
      file,
      place.line,
      "a dialect already",
      "a record without one, so that nothing of yours is written over",
      "compare the two, and take the lines that are missing from the proposal",
    );
  }
  const lineEnd = text.includes("\r\n") ? "\r\n" : "\n";
  const added = `${text === "" || /[\r\n]$/.test(text) ? "" : lineEnd}${dialectBlock(dialect, lineEnd)}`;
  const after = readRecord(text + added, file, instrument);
  if (after.value?.value.dialect === undefined || othersOf(after.value.value) !== othersOf(before.value.value))
    return refuse(
      file,
      undefined,
      "a record to whose end nothing can be added",
      "one field a line, and no end mark",
      "write the record with one field a line, or put the proposal in by hand",
    );
  return { value: text + added, problems: [] };
}

/** All fields but the dialect, in one order. */
function othersOf(record: object): string {
  return JSON.stringify(
    Object.entries(record)
      .filter(([key]) => key !== "dialect")
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );
}

function refuse(file: string, line: number | undefined, found: string, expected: string, mend: string): Checked<undefined> {
  return {
    value: undefined,
    problems: [{ id: "dialect-record", level: "error", place: line === undefined ? { file } : { file, line }, found, expected, mend }],
  };
}
