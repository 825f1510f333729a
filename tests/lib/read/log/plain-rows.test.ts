import { describe, expect, it } from "vitest";
import { type ResolvedDialect, resolveDialect } from "../../../../lib/read/dialect.ts";
import { readBothWays } from "../../../dialects/compare-rows.ts";

const heading = "elapsed_s,voltage_V,current_A";
const rowsFrom = (from: number, count: number): string[] =>
  Array.from({ length: count }, (_, i) => `${from + i},12.${String(100 + i).slice(1)},4.5`);

function dialectOf(lines: readonly string[]): ResolvedDialect {
  const { value, problems } = resolveDialect(lines, "utf-8", undefined, "log.csv", undefined);
  if (value === undefined) throw new Error(JSON.stringify(problems));
  return value;
}

/** Reads lines in both ways, in chunks of so many bytes. */
function read(lines: readonly string[], chunkLength = 1 << 18) {
  const bytes = new TextEncoder().encode(`${lines.join("\n")}\n`);
  const chunks: Uint8Array[] = [];
  for (let from = 0; from < bytes.length; from += chunkLength) chunks.push(bytes.subarray(from, from + chunkLength));
  return readBothWays(chunks, dialectOf(lines.slice(0, 30)));
}

describe("rows of a plain log", () => {
  it("are read from bytes, all but the one that is shown as a sample", async () => {
    const { plainRows, difference, outcome } = await read([heading, ...rowsFrom(0, 1000)]);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(999);
    expect(outcome.rows?.lines.at(-1)).toBe(1001);
    expect(outcome.rows?.sample?.line).toBe(2);
  });

  it.each([1, 2, 3, 17, 64])("come whole out of chunks of %d bytes", async (chunkLength) => {
    const { plainRows, difference } = await read([heading, ...rowsFrom(0, 50)], chunkLength);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(49);
  });

  it("go on being plain behind a row that is not", async () => {
    const { plainRows, difference, outcome } = await read([heading, ...rowsFrom(0, 100), "100,OL,4.5", "", ...rowsFrom(101, 100)]);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(199);
    expect(outcome.rows?.blank).toBe(1);
  });

  it("are handed over at the first quotation mark, with the right line, and nothing twice", async () => {
    const { plainRows, difference, outcome } = await read([heading, ...rowsFrom(0, 100), '100,"12.5",4.5', ...rowsFrom(101, 100)]);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(99);
    expect(outcome.rows?.timesS).toEqual(Float64Array.from({ length: 201 }, (_, i) => i));
    expect(outcome.rows?.lines).toEqual(Uint32Array.from({ length: 201 }, (_, i) => i + 2));
  });

  it("are handed over at a lone carriage return", async () => {
    const { plainRows, difference, outcome } = await read([
      heading,
      ...rowsFrom(0, 100),
      "100,12.5,4.5\r101,12.5,4.5",
      ...rowsFrom(102, 50),
    ]);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(99);
    expect(outcome.rows?.lines.at(-1)).toBe(153);
  });

  it("are handed over at a line without an end, which the reference reader then refuses", async () => {
    const { difference, outcome } = await read([heading, ...rowsFrom(0, 100), "1".repeat(1_000_100)]);
    expect(difference).toBeUndefined();
    expect(outcome.fault).toBe("CSV_MAX_RECORD_SIZE");
  });

  it("are handed over where a row is too long, however plain its columns are, and even if it came in one chunk", async () => {
    const lines = [`${heading},note`, ...rowsFrom(0, 100).map((row) => `${row},ok`), `100,12.5,4.5,${"x".repeat(1_000_100)}`];
    const { difference, outcome } = await read(lines, 1 << 21);
    expect(difference).toBeUndefined();
    expect(outcome.fault).toBe("CSV_MAX_RECORD_SIZE");
  });

  it("are read as texts where headings could pass for a row", async () => {
    const lines = [heading, ...rowsFrom(0, 50), "0,1,2", ...rowsFrom(51, 50)];
    const dialect = { ...dialectOf(lines), headings: ["0", "1", "2"] };
    const { plainRows, difference, outcome } = await readBothWays([new TextEncoder().encode(lines.join("\n"))], dialect);
    expect(difference).toBeUndefined();
    expect(plainRows).toBe(0);
    expect(outcome.rows?.marks).toHaveLength(1);
  });

  it("with a bad letter are refused as by the reference reader, wherever it stands", async () => {
    const lines = [heading, ...rowsFrom(0, 100)];
    const bytes = new TextEncoder().encode(lines.join("\n"));
    bytes[bytes.length - 2] = 0xff;
    const { difference, outcome } = await readBothWays([bytes.subarray(0, 700), bytes.subarray(700)], dialectOf(lines.slice(0, 30)));
    expect(difference).toBeUndefined();
    expect(outcome.fault).toBe("encoding");
  });
});
