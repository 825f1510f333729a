/**
 * Streams a sheet of an Office Open XML workbook as lines of text.
 * Source: ECMA-376 part 1, 18.3.1 (cells), 18.8.30 (built-in number formats), 18.17.4.1 (dates); from memory, and held in the tests against
 * an independent reader.
 */
import { ContainerFault } from "./limits.ts";
import { type Cell, lineOfCells, mostColumns, mostRows, textOfDuration, textOfSerial } from "./sheet-text.ts";
import { attribute, XmlReader } from "./xml.ts";
import { streamEntry, type ZipEntry } from "./zip.ts";

type Kind = "number" | "date" | "duration";

export type Sheet = {
  readonly name: string;
  readonly isNamed: boolean;
  readonly names: readonly string[];
  lines(): AsyncGenerator<string>;
};

/**
 * Opens the first sheet of a workbook, or the one named.
 * @throws ContainerFault where there is no such sheet, or the workbook lacks a part
 */
export async function openXlsx(absolutePath: string, entries: readonly ZipEntry[], wanted: string | undefined): Promise<Sheet> {
  const part = (name: string): ZipEntry | undefined => entries.find((entry) => entry.name.toLowerCase() === name.toLowerCase());
  const workbook = part("xl/workbook.xml");
  if (workbook === undefined) throw lacks("xl/workbook.xml");
  const sheets: { name: string; id: string }[] = [];
  let is1904 = false;
  await readPart(absolutePath, workbook, {
    open(name, attributes) {
      if (name.endsWith("workbookPr")) is1904 = /^(?:1|true)$/.test(attribute(attributes, "date1904") ?? "");
      if (/(?:^|:)sheet$/.test(name)) sheets.push({ name: attribute(attributes, "name") ?? "", id: attribute(attributes, "r:id") ?? "" });
    },
  });
  const targets = new Map<string, string>();
  const relations = part("xl/_rels/workbook.xml.rels");
  if (relations !== undefined)
    await readPart(absolutePath, relations, {
      open(name, attributes) {
        if (name.endsWith("Relationship")) targets.set(attribute(attributes, "Id") ?? "", attribute(attributes, "Target") ?? "");
      },
    });
  const names = sheets.map(({ name }) => name);
  const sheet = wanted === undefined ? sheets[0] : sheets.find(({ name }) => name === wanted);
  if (sheet === undefined) throw noSheet(wanted, names);
  const target = targets.get(sheet.id) ?? `worksheets/sheet${sheets.indexOf(sheet) + 1}.xml`;
  const body = part(target.startsWith("/") ? target.slice(1) : `xl/${target}`);
  if (body === undefined) throw lacks(target);
  const shared = await readSharedStrings(absolutePath, part("xl/sharedStrings.xml"));
  const kinds = await readKinds(absolutePath, part("xl/styles.xml"));
  return { name: sheet.name, isNamed: wanted !== undefined, names, lines: () => streamRows(absolutePath, body, shared, kinds, is1904) };
}

export function noSheet(wanted: string | undefined, names: readonly string[]): ContainerFault {
  return new ContainerFault(
    names.length === 0 ? "no sheets" : `the sheets ${names.map((name) => `"${name}"`).join(", ")}`,
    wanted === undefined ? "a sheet" : `a sheet named "${wanted}"`,
    "correct dialect: sheet: in the recorder's record, or leave it out where the first sheet is the log",
  );
}

const lacks = (part: string): ContainerFault =>
  new ContainerFault(
    `a workbook without ${part}`,
    "a spreadsheet as a spreadsheet program saves it",
    "open it in a spreadsheet program and save it again, or save the sheet as CSV",
  );

async function readPart(
  absolutePath: string,
  entry: ZipEntry,
  handler: Partial<ConstructorParameters<typeof XmlReader>[0]>,
): Promise<void> {
  const nothing = (): void => undefined;
  const reader = new XmlReader({ open: nothing, close: nothing, text: nothing, ...handler });
  const decoder = new TextDecoder("utf-8");
  for await (const chunk of streamEntry(absolutePath, entry)) reader.write(decoder.decode(chunk, { stream: true }));
  reader.end();
}

/** Texts that cells point to; the reading aids of East Asian texts (rPh) are no part of them. */
async function readSharedStrings(absolutePath: string, entry: ZipEntry | undefined): Promise<string[]> {
  const strings: string[] = [];
  if (entry === undefined) return strings;
  let text = "";
  let isIn = false;
  let isAid = false;
  await readPart(absolutePath, entry, {
    open(name) {
      if (name === "si") text = "";
      else if (name === "t") isIn = true;
      else if (name === "rPh") isAid = true;
    },
    close(name) {
      if (name === "si") strings.push(text);
      else if (name === "t") isIn = false;
      else if (name === "rPh") isAid = false;
    },
    text(piece) {
      if (isIn && !isAid) text += piece;
    },
  });
  return strings;
}

/** For each cell style what its number stands for. */
async function readKinds(absolutePath: string, entry: ZipEntry | undefined): Promise<Kind[]> {
  const codes = new Map<number, string>();
  const kinds: Kind[] = [];
  if (entry === undefined) return kinds;
  let isIn = false;
  await readPart(absolutePath, entry, {
    open(name, attributes) {
      if (name === "numFmt") codes.set(Number(attribute(attributes, "numFmtId")), attribute(attributes, "formatCode") ?? "");
      else if (name === "cellXfs") isIn = true;
      else if (name === "xf" && isIn) kinds.push(kindOfFormat(Number(attribute(attributes, "numFmtId") ?? 0), codes));
    },
    close(name) {
      if (name === "cellXfs") isIn = false;
    },
  });
  return kinds;
}

/** What a number format shows: built-in formats by number, others by their letters outside quotes and colours. */
export function kindOfFormat(id: number, codes: ReadonlyMap<number, string>): Kind {
  if (id === 46) return "duration";
  if ((id >= 14 && id <= 22) || id === 45 || id === 47 || (id >= 27 && id <= 36) || (id >= 50 && id <= 58)) return "date";
  const code = codes.get(id);
  if (code === undefined) return "number";
  if (/\[(?:h+|m+|s+)\]/i.test(code)) return "duration";
  return /[ymdhs]/i.test(code.replace(/"[^"]*"|\\.|\[[^\]]*\]|general/gi, "")) ? "date" : "number";
}

async function* streamRows(
  absolutePath: string,
  entry: ZipEntry,
  shared: readonly string[],
  kinds: readonly Kind[],
  is1904: boolean,
): AsyncGenerator<string> {
  const lines: string[] = [];
  let row = 0;
  let cells: Cell[] = [];
  let column = -1;
  let type = "n";
  let kind: Kind = "number";
  let value = "";
  let isValue = false;
  const reader = new XmlReader({
    open(name, attributes) {
      if (name === "row") {
        const number = Number(attribute(attributes, "r") ?? row + 1);
        if (!(number > row && number <= mostRows)) throw lacks("rows in order");
        while (++row < number) lines.push("");
        cells = [];
        column = -1;
      } else if (name === "c") {
        const reference = /^([A-Z]{1,3})\d+$/.exec(attribute(attributes, "r") ?? "");
        column = reference === null ? column + 1 : columnOfLetters(reference[1] ?? "");
        if (column >= mostColumns) throw lacks("columns in order");
        type = attribute(attributes, "t") ?? "n";
        kind = kinds[Number(attribute(attributes, "s") ?? -1)] ?? "number";
        value = "";
      } else if (name === "v" || name === "t") isValue = true;
    },
    close(name) {
      if (name === "v" || name === "t") isValue = false;
      else if (name === "c" && value !== "") cells.push({ column, text: textOfCell(value, type, kind, shared, is1904) });
      else if (name === "row") lines.push(lineOfCells(cells));
    },
    text(piece) {
      if (isValue) value += piece;
    },
  });
  const decoder = new TextDecoder("utf-8");
  for await (const chunk of streamEntry(absolutePath, entry)) {
    reader.write(decoder.decode(chunk, { stream: true }));
    yield* lines.splice(0);
  }
  reader.end();
  yield* lines.splice(0);
}

function textOfCell(value: string, type: string, kind: Kind, shared: readonly string[], is1904: boolean): string {
  if (type === "s") return shared[Number(value)] ?? "";
  if (type === "d") return value.replace("T", " ");
  if (type !== "n" || kind === "number") return value;
  return kind === "duration" ? textOfDuration(Number(value)) : textOfSerial(Number(value), is1904);
}

function columnOfLetters(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}
