/**
 * Streams a table of an OpenDocument spreadsheet as lines of text.
 * Source: OASIS OpenDocument 1.3 part 3, 9.1 (tables) and 19.385 to 19.391 (values of cells), from memory.
 */
import { parseClockS } from "../clock.ts";
import { ContainerFault } from "./limits.ts";
import { type Cell, lineOfCells, mostColumns, mostRows, textOfDuration } from "./sheet-text.ts";
import { noSheet, type Sheet } from "./xlsx.ts";
import { attribute, XmlReader } from "./xml.ts";
import { streamEntry, type ZipEntry } from "./zip.ts";

/**
 * Opens the first table of a spreadsheet, or the one named.
 * @throws ContainerFault where there is no such table
 */
export async function openOds(absolutePath: string, entries: readonly ZipEntry[], wanted: string | undefined): Promise<Sheet> {
  const content = entries.find(({ name }) => name === "content.xml");
  if (content === undefined)
    throw new ContainerFault(
      "a spreadsheet without content.xml",
      "a spreadsheet as a spreadsheet program saves it",
      "open it in a spreadsheet program and save it again, or save the sheet as CSV",
    );
  const names: string[] = [];
  const nothing = (): void => undefined;
  const reader = new XmlReader({
    open(name, attributes) {
      if (name === "table:table") names.push(attribute(attributes, "table:name") ?? "");
    },
    close: nothing,
    text: nothing,
  });
  const decoder = new TextDecoder("utf-8");
  for await (const chunk of streamEntry(absolutePath, content)) reader.write(decoder.decode(chunk, { stream: true }));
  reader.end();
  const index = wanted === undefined ? 0 : names.indexOf(wanted);
  const name = names[index];
  if (name === undefined) throw noSheet(wanted, names);
  return { name, isNamed: wanted !== undefined, names, lines: () => streamRows(absolutePath, content, index) };
}

async function* streamRows(absolutePath: string, content: ZipEntry, wantedTable: number): AsyncGenerator<string> {
  const lines: string[] = [];
  let table = -1;
  let depth = 0;
  let rowRepeat = 1;
  let rows = 0;
  /** Empty rows wait until a row with values follows: a table is padded with empty rows to its very end. */
  let emptyRows = 0;
  let cells: Cell[] = [];
  let column = 0;
  let cellRepeat = 1;
  let value: string | undefined;
  let text = "";
  let isText = false;
  const emit = (line: string, repeat: number): void => {
    if (line === "") {
      emptyRows += repeat;
      return;
    }
    rows += emptyRows + repeat;
    if (rows > mostRows) throw new ContainerFault(`more than ${mostRows} rows`, "a sheet", "save the sheet as CSV");
    for (let i = 0; i < emptyRows; i++) lines.push("");
    for (let i = 0; i < repeat; i++) lines.push(line);
    emptyRows = 0;
  };
  const reader = new XmlReader({
    open(name, attributes) {
      if (name === "table:table") {
        depth++;
        if (depth === 1) table++;
      }
      if (table !== wantedTable || depth !== 1) return;
      if (name === "table:table-row") {
        rowRepeat = countOf(attribute(attributes, "table:number-rows-repeated"));
        cells = [];
        column = 0;
      } else if (name === "table:table-cell" || name === "table:covered-table-cell") {
        cellRepeat = countOf(attribute(attributes, "table:number-columns-repeated"));
        value = valueOfCell(attributes);
        text = "";
      } else if (name === "text:p") {
        if (text !== "") text += " ";
        isText = true;
      } else if (name === "text:s" && isText) text += " ".repeat(Math.min(100, countOf(attribute(attributes, "text:c"))));
    },
    close(name) {
      if (table === wantedTable && depth === 1) {
        if (name === "text:p") isText = false;
        else if (name === "table:table-cell" || name === "table:covered-table-cell") {
          const written = value ?? text;
          if (written !== "")
            for (let i = 0; i < Math.min(cellRepeat, mostColumns - column); i++) cells.push({ column: column + i, text: written });
          column += cellRepeat;
        } else if (name === "table:table-row") emit(lineOfCells(cells), rowRepeat);
      }
      if (name === "table:table") depth--;
    },
    text(piece) {
      if (isText) text += piece;
    },
  });
  const decoder = new TextDecoder("utf-8");
  for await (const chunk of streamEntry(absolutePath, content)) {
    reader.write(decoder.decode(chunk, { stream: true }));
    yield* lines.splice(0);
  }
  reader.end();
  yield* lines.splice(0);
}

function countOf(text: string | undefined): number {
  const count = Number(text ?? 1);
  return Number.isInteger(count) && count > 0 ? count : 1;
}

/** What a cell's typed value says; undefined for text, which stands in its paragraphs. */
function valueOfCell(attributes: string): string | undefined {
  switch (attribute(attributes, "office:value-type")) {
    case "float":
    case "currency":
    case "percentage":
      return attribute(attributes, "office:value");
    case "date":
      return attribute(attributes, "office:date-value")?.replace("T", " ");
    case "time": {
      const seconds = parseClockS(attribute(attributes, "office:time-value") ?? "");
      return Number.isNaN(seconds) ? undefined : textOfDuration(seconds / 86_400);
    }
    default:
      return undefined;
  }
}
