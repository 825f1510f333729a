import path from "node:path";
import { describe, expect, it } from "vitest";
import { decodeFile, detectEncoding, linesOfFile, readHead } from "../../../lib/read/decode.ts";
import { withFiles } from "./temp-files.ts";

const bytes = (...values: number[]): Uint8Array => Uint8Array.of(...values);
const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);
const utf16 = (text: string, littleEndian: boolean): Uint8Array => {
  const view = new DataView(new ArrayBuffer(text.length * 2));
  [...text].forEach((character, index) => {
    view.setUint16(index * 2, character.charCodeAt(0), littleEndian);
  });
  return new Uint8Array(view.buffer);
};

const withFile = <T>(content: Uint8Array | string, use: (file: string) => Promise<T>): Promise<T> =>
  withFiles({ "log.csv": content }, (root) => use(path.join(root, "log.csv")));

const collect = async <T>(values: AsyncIterable<T>): Promise<T[]> => {
  const all: T[] = [];
  for await (const value of values) all.push(value);
  return all;
};

/** decodeFile reads 256 KiB at a time; a text this long puts what follows across two readings. */
const chunk = 1 << 18;

describe("encodings", () => {
  it.each([
    ["a UTF-8 mark", bytes(0xef, 0xbb, 0xbf, 0x61), "utf-8"],
    ["a UTF-16 mark, little end first", bytes(0xff, 0xfe, 0x61, 0), "utf-16le"],
    ["a UTF-16 mark, big end first", bytes(0xfe, 0xff, 0, 0x61), "utf-16be"],
    ["UTF-16 without a mark, little", utf16("time;12.5\n", true), "utf-16le"],
    ["UTF-16 without a mark, big", utf16("time;12.5\n", false), "utf-16be"],
    ["plain letters", utf8("time;12.5\n"), "utf-8"],
    ["accents in UTF-8", utf8("Napięcie;Prąd\n"), "utf-8"],
    ["an accent cut off at the end of the head", utf8("Napię").subarray(0, -1), "utf-8"],
    ["a degree sign in one byte", bytes(0x54, 0xb0, 0x43, 0x0a), "windows-1252"],
    ["nothing", bytes(), "utf-8"],
  ])("tells %s", (_, head, encoding) => expect(detectEncoding(head)).toBe(encoding));
});

describe("heads", () => {
  it.each([
    [0, 0],
    [5, 5],
    [10, 10],
    [99, 10],
  ])("reads at most what is asked for: %d asked, %d there", (asked, got) =>
    withFile("0123456789", async (file) => expect(await readHead(file, asked)).toEqual(utf8("0123456789").subarray(0, got))),
  );
});

describe("decoding", () => {
  it("puts a character together that two readings cut apart", () =>
    withFile(`${"x".repeat(chunk - 1)}ę;1`, async (file) => {
      const text = (await collect(decodeFile(file, "utf-8"))).join("");
      expect(text.slice(-4)).toBe("xę;1");
      expect(text).toHaveLength(chunk + 2);
    }));

  it("takes the byte order mark off", () =>
    withFile(bytes(0xef, 0xbb, 0xbf, 0x61), async (file) => expect(await collect(decodeFile(file, "utf-8"))).toEqual(["a"])));

  it("reads windows-1250, where byte EA is ę", () =>
    withFile(bytes(0x4e, 0xea), async (file) => expect(await collect(decodeFile(file, "windows-1250"))).toEqual(["Nę"])));

  it.each([
    ["in the middle", bytes(0x61, 0xff, 0x61)],
    ["cut off at the end", bytes(0x61, 0xc4)],
  ])("refuses a byte that is not of the encoding, %s", (_, content) =>
    withFile(content, async (file) => {
      await expect(collect(decodeFile(file, "utf-8"))).rejects.toBeInstanceOf(TypeError);
    }),
  );
});

describe("lines", () => {
  it.each([
    ["\n", "a\nb\nc"],
    ["\r\n", "a\r\nb\r\nc"],
    ["\r", "a\rb\rc"],
    ["a mixture", "a\r\nb\rc"],
  ])("end with %j", (_, text) =>
    withFile(text, async (file) => expect(await collect(linesOfFile(file, "utf-8"))).toEqual(["a", "b", "c"])),
  );

  it("are not doubled where a reading ends between carriage return and line feed", () =>
    withFile(`${"x".repeat(chunk - 1)}\r\nb`, async (file) => {
      const lines = await collect(linesOfFile(file, "utf-8"));
      expect(lines.map((line) => line.length)).toEqual([chunk - 1, 1]);
    }));

  it("are split where a reading ends with a carriage return alone", () =>
    withFile(`${"x".repeat(chunk - 1)}\rb`, async (file) => {
      const lines = await collect(linesOfFile(file, "utf-8"));
      expect(lines.map((line) => line.length)).toEqual([chunk - 1, 1]);
    }));
});
