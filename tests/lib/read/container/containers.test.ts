import { readFile } from "node:fs/promises";
import path from "node:path";
import { deflateRawSync, gzipSync } from "node:zlib";
import readSheet from "read-excel-file/node";
import { describe, expect, it } from "vitest";
import { ContainerFault } from "../../../../lib/read/container/limits.ts";
import { openLog } from "../../../../lib/read/container/open-log.ts";
import { lineOfCells, textOfDuration, textOfSerial } from "../../../../lib/read/container/sheet-text.ts";
import { kindOfFormat } from "../../../../lib/read/container/xlsx.ts";
import { attribute, unescapeXml, XmlReader } from "../../../../lib/read/container/xml.ts";
import { addToCrc, readZipDirectory } from "../../../../lib/read/container/zip.ts";
import { decode } from "../../../../lib/read/decode.ts";
import { corpusFiles } from "../../../dialects/corpus.ts";
import { withFiles } from "../temp-files.ts";

async function textOf(absolutePath: string, sheet?: string): Promise<string> {
  let text = "";
  for await (const piece of decode((await openLog(absolutePath, sheet)).stream(), "utf-8")) text += piece;
  return text;
}

const corpusPath = (name: string): string => corpusFiles().find((file) => file.name === name)?.absolutePath ?? "";

describe("check sums", () => {
  // The check value of CRC-32 in every catalogue of such sums: 0xCBF43926 for the nine digits.
  it("are 0xcbf43926 for 123456789", () =>
    expect((addToCrc(0xffffffff, new TextEncoder().encode("123456789")) ^ 0xffffffff) >>> 0).toBe(0xcbf43926));
});

describe("zip files", () => {
  it("show their entries", async () => {
    const entries = await readZipDirectory(corpusPath("zip"));
    expect(entries.map(({ name, method }) => [name, method])).toEqual([["day-1.csv", 8]]);
  });

  it("give back what was packed, as the plain file has it", async () => {
    const plain = await readFile(corpusPath("comma-point"), "utf8");
    for (const name of ["zip", "zip-stored", "gzip"]) expect(await textOf(corpusPath(name))).toBe(plain);
  });
});

describe("packed files that were made to fill memory", () => {
  const zeroes = Buffer.alloc(24 * 1024 * 1024, "0");

  it("are stopped while they unfold: gzip", async () => {
    await withFiles({ "log.csv.gz": gzipSync(zeroes) }, async (root) => {
      await expect(textOf(path.join(root, "log.csv.gz"))).rejects.toThrow(/bytes that unfold to more than \d+ bytes/);
    });
  });

  it("are stopped while they unfold: zip, whatever its directory says of the size", async () => {
    const packed = deflateRawSync(zeroes);
    await withFiles({ "log.zip": zipOf("log.csv", packed, 100) }, async (root) => {
      await expect(textOf(path.join(root, "log.zip"))).rejects.toThrow(/at most 250 times its packed size/);
    });
  });
});

/** A zip file of one deflated entry, written here by the layout of its directory alone. */
function zipOf(name: string, packed: Buffer, bytes: number): Buffer {
  const local = Buffer.alloc(30 + name.length);
  local.writeUInt32LE(0x04034b50, 0);
  local.writeUInt16LE(8, 8);
  local.writeUInt16LE(name.length, 26);
  local.write(name, 30);
  const central = Buffer.alloc(46 + name.length);
  central.writeUInt32LE(0x02014b50, 0);
  central.writeUInt16LE(8, 10);
  central.writeUInt32LE(packed.length, 20);
  central.writeUInt32LE(bytes, 24);
  central.writeUInt16LE(name.length, 28);
  central.write(name, 46);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(1, 8);
  end.writeUInt16LE(1, 10);
  end.writeUInt32LE(central.length, 12);
  end.writeUInt32LE(local.length + packed.length, 16);
  return Buffer.concat([local, packed, central, end]);
}

describe("workbooks", () => {
  it.each(["xlsx", "xlsx-1904"])("%s: has the numbers that an independent reader (read-excel-file) finds in it", async (name) => {
    const lines = (await textOf(corpusPath(name)))
      .trimEnd()
      .split("\n")
      .map((line) => line.split("\t"));
    const sheets = await readSheet(corpusPath(name));
    const table = (Array.isArray(sheets[0]) ? sheets : (sheets[0] as { data: unknown[] }).data) as unknown[][];
    expect(lines).toHaveLength(table.length);
    for (const [row, cells] of table.entries())
      for (const [column, value] of cells.entries()) {
        const text = lines[row]?.[column] ?? "";
        // A millisecond: a day's fraction in a double is finer than that, and one of the two cuts where the other rounds.
        if (value instanceof Date) expect(Math.abs(Date.parse(`${text.replace(" ", "T")}Z`) - value.getTime())).toBeLessThanOrEqual(1);
        else if (typeof value === "number") expect(Number(text)).toBe(value);
        else expect(text).toBe(value);
      }
  });

  // ECMA-376 part 1, 18.8.30: built-in formats 14 to 22 and 45 to 47 are dates and times, 46 is [h]:mm:ss.
  it.each([
    [0, "", "number"],
    [2, "", "number"],
    [14, "", "date"],
    [22, "", "date"],
    [46, "", "duration"],
    [164, "yyyy\\-mm\\-dd\\ hh:mm:ss", "date"],
    [165, '0.00" V"', "number"],
    [166, "[Red]0.00", "number"],
    [167, "[h]:mm", "duration"],
    [168, "General", "number"],
    [169, "#,##0.00", "number"],
  ])("tell dates by format %d %s", (id, code, kind) => expect(kindOfFormat(id, new Map([[id, code]]))).toBe(kind));

  // 1 March 1900 is day 61 in every spreadsheet (day 60 is the 29 February that never was); 1 January 2000 is 36526; 1904 counts 1462 less.
  it.each([
    [61, false, "1900-03-01 00:00:00"],
    [36_526, false, "2000-01-01 00:00:00"],
    [35_064, true, "2000-01-01 00:00:00"],
    [46_095.333333333336, false, "2026-03-14 08:00:00"],
    [46_095.00000578704, false, "2026-03-14 00:00:00.500"],
    [0.5, false, "12:00:00"],
  ])("read day %d (from 1904: %s) as %s", (days, is1904, text) => expect(textOfSerial(days, is1904)).toBe(text));

  it("write durations beyond a day in hours", () => expect(textOfDuration(1.5)).toBe("36:00:00"));

  it("lay cells at their columns, whatever stands in them", () =>
    expect(
      lineOfCells([
        { column: 0, text: "a\tb\nc" },
        { column: 3, text: '5"' },
      ]),
    ).toBe("a b c\t\t\t5'"));
});

describe("XML", () => {
  function events(text: string, size: number): string[] {
    const seen: string[] = [];
    const reader = new XmlReader({
      open: (name, attributes) => seen.push(`<${name}${attribute(attributes, "r") ?? ""}`),
      close: (name) => seen.push(`>${name}`),
      text: (piece) => seen.push(piece),
    });
    for (let at = 0; at < text.length; at += size) reader.write(text.slice(at, at + size));
    reader.end();
    return seen;
  }
  const document = "<?xml version='1.0'?><!-- a > b --><row r=\"1>\"><c/><v>1 &amp; 2</v><![CDATA[<3>]]></row>";

  it.each([1, 2, 3, 7, 1000])("is read alike in pieces of %d characters", (size) =>
    expect(events(document, size)).toEqual(["<row1>", "<c", ">c", "<v", "1 & 2", ">v", "<3>", ">row"]),
  );

  it.each([
    ["a document type", "<!DOCTYPE x><a/>"],
    ["a tag inside a tag", "<a <b>"],
    ["a document that stops", "<a><b></b>"],
  ])("is refused: %s", (_, text) => expect(() => events(text, 1000)).toThrow(ContainerFault));

  it("knows the five entities and numbers, and unfolds no others", () =>
    expect(unescapeXml("&lt;&gt;&quot;&apos;&amp;&#65;&#x42;&bomb;")).toBe("<>\"'&AB&bomb;"));
});
