/** The results as JSON text. Numbers keep twelve digits: more than any figure carries, and the same on every machine. */

const twelveDigits = (_: string, value: unknown): unknown =>
  typeof value === "number" && !Number.isInteger(value) ? Number(value.toPrecision(12)) : value;

/** A value as a file of its own, one field a line. */
export function toJson(value: unknown): string {
  return `${JSON.stringify(value, twelveDigits, 1)}\n`;
}

/** A value as it stands in such a file, so many levels deep: pieces that were written once can be put together again. */
export function jsonPiece(value: unknown, depth: number): string {
  // A line break within a text of JSON is written as an escape, so these are breaks between fields.
  return (JSON.stringify(value, twelveDigits, 1) ?? "null").replaceAll("\n", `\n${" ".repeat(depth)}`);
}

/**
 * An object with one field that is a list of ready pieces, in the form of `toJson`.
 *
 * @param fields  the object; the list's field holds its place
 * @param pieces  made by `jsonPiece`, two levels deep
 */
export function jsonWithList(fields: Readonly<Record<string, unknown>>, list: string, pieces: readonly string[]): string {
  const lines = Object.entries(fields)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => {
      const text = name !== list ? jsonPiece(value, 1) : pieces.length === 0 ? "[]" : `[\n  ${pieces.join(",\n  ")}\n ]`;
      return ` ${JSON.stringify(name)}: ${text}`;
    });
  return `{\n${lines.join(",\n")}\n}\n`;
}
