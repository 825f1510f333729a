/** Opens a log whatever it is wrapped in: plain bytes, gzip, zip, or a spreadsheet. Nothing is written; files are opened for reading only. */
import { createReadStream } from "node:fs";
import { stat } from "node:fs/promises";
import { createGunzip } from "node:zlib";
import { bytesOfFile, readHead } from "../decode.ts";
import { ContainerFault, limited } from "./limits.ts";
import { openOds } from "./ods.ts";
import { openXlsx, type Sheet } from "./xlsx.ts";
import { readZipDirectory, streamEntry, type ZipEntry } from "./zip.ts";

export type OpenedLog = {
  /** What the log came in, in words; undefined for a plain file. */
  readonly container: string | undefined;
  /** A spreadsheet: its text is UTF-8 with tabs, and its line and column are the sheet's row and column. */
  readonly sheet: { readonly name: string; readonly isNamed: boolean } | undefined;
  /** Bytes of a plain file; undefined for a packed one, whose length shows when it is unpacked. */
  readonly size: number | undefined;
  /** The log's bytes from the beginning, each time anew. */
  stream(): AsyncIterable<Uint8Array>;
};

/**
 * Opens a log.
 * @param sheet  the sheet that the recorder's record names
 * @throws ContainerFault where the file is packed or written in a way that is not read
 */
export async function openLog(absolutePath: string, sheet: string | undefined): Promise<OpenedLog> {
  const head = Buffer.from(await readHead(absolutePath, 8));
  const { size } = await stat(absolutePath);
  if (head.subarray(0, 2).equals(Buffer.from([0x1f, 0x8b]))) {
    return { container: "gzip", sheet: undefined, size: undefined, stream: () => gunzip(absolutePath, size) };
  }
  if (head.subarray(0, 4).equals(Buffer.from("PK\u0003\u0004", "latin1"))) return openZip(absolutePath, sheet);
  refuseOthers(head);
  return { container: undefined, sheet: undefined, size, stream: () => bytesOfFile(absolutePath) };
}

async function* gunzip(absolutePath: string, size: number): AsyncGenerator<Uint8Array> {
  const packed = createReadStream(absolutePath, { flags: "r" });
  const unpacked = packed.pipe(createGunzip());
  packed.on("error", (error) => unpacked.destroy(error));
  try {
    yield* limited(unpacked, size);
  } catch (error) {
    if (error instanceof ContainerFault) throw error;
    throw new ContainerFault(
      "a gzip file that is cut off or damaged",
      "a whole gzip file",
      "copy the file from its source once more; it is damaged, or was not copied whole",
    );
  } finally {
    packed.destroy();
  }
}

async function openZip(absolutePath: string, wanted: string | undefined): Promise<OpenedLog> {
  const entries = await readZipDirectory(absolutePath);
  const has = (name: string): boolean => entries.some((entry) => entry.name.toLowerCase() === name);
  if (has("xl/workbook.xml")) return ofSheet("xlsx workbook", await openXlsx(absolutePath, entries, wanted));
  if (has("content.xml") && has("mimetype")) return ofSheet("ods spreadsheet", await openOds(absolutePath, entries, wanted));
  const logs = entries.filter(({ name }) => !/(?:^|\/)(?:\.|__MACOSX\/)/.test(name));
  const [log, ...more] = logs;
  if (log === undefined || more.length > 0)
    throw new ContainerFault(
      log === undefined ? "an empty zip file" : `${logs.length} files: ${namesOf(logs)}`,
      "one log in a zip file",
      "unpack it, put each log here by itself, and list them in test.yaml",
    );
  return { container: `zip, "${log.name}"`, sheet: undefined, size: undefined, stream: () => streamEntry(absolutePath, log) };
}

function namesOf(entries: readonly ZipEntry[]): string {
  const names = entries.slice(0, 4).map(({ name }) => `"${name}"`);
  return entries.length > 4 ? `${names.join(", ")} and ${entries.length - 4} more` : names.join(", ");
}

function ofSheet(container: string, sheet: Sheet): OpenedLog {
  return {
    container,
    sheet: { name: sheet.name, isNamed: sheet.isNamed },
    size: undefined,
    async *stream() {
      const encoder = new TextEncoder();
      let pending: string[] = [];
      for await (const line of sheet.lines()) {
        pending.push(line);
        if (pending.length < 500) continue;
        yield encoder.encode(`${pending.join("\n")}\n`);
        pending = [];
      }
      if (pending.length > 0) yield encoder.encode(`${pending.join("\n")}\n`);
    },
  };
}

/** Files that are no text, told from their first bytes. Common practice of file types. */
const others: readonly { readonly bytes: readonly number[]; readonly found: string; readonly mend: string }[] = [
  {
    bytes: [0xd0, 0xcf, 0x11, 0xe0],
    found: "a spreadsheet of the old kind (.xls)",
    mend: "open it in a spreadsheet program and save it as .xlsx or as CSV",
  },
  {
    bytes: [0x25, 0x50, 0x44, 0x46],
    found: "a PDF",
    mend: "export the log from the recorder's program as CSV; a print of it holds no rows",
  },
  {
    bytes: [0x89, 0x50, 0x4e, 0x47],
    found: "a picture (PNG)",
    mend: "move it to photos/, and export the log from the recorder's program as CSV",
  },
  {
    bytes: [0xff, 0xd8, 0xff],
    found: "a picture (JPEG)",
    mend: "move it to photos/, and export the log from the recorder's program as CSV",
  },
  { bytes: [0x52, 0x61, 0x72, 0x21], found: "a RAR archive", mend: "unpack it, and put the log here unpacked or as zip" },
  { bytes: [0x37, 0x7a, 0xbc, 0xaf], found: "a 7z archive", mend: "unpack it, and put the log here unpacked or as zip" },
];

function refuseOthers(head: Buffer): void {
  const other = others.find(({ bytes }) => head.subarray(0, bytes.length).equals(Buffer.from(bytes)));
  if (other !== undefined) throw new ContainerFault(other.found, "a log as text, or as .xlsx, .ods, gzip or zip", other.mend);
}
