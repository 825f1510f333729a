/**
 * Reads the directory of a zip file and streams its entries; stored and deflated entries, no encryption, no zip64.
 *
 * Layout after APPNOTE 6.3.x, 4.3.6 to 4.3.16 (from memory): the end record lies in the last 65,557 bytes and names the central directory,
 * whose entries name the local headers before the data. Sizes are taken from the central directory, since local ones may be zero.
 */
import { createReadStream } from "node:fs";
import { type FileHandle, open } from "node:fs/promises";
import { createInflateRaw } from "node:zlib";
import { ContainerFault, limited } from "./limits.ts";

export type ZipEntry = {
  readonly name: string;
  readonly method: number;
  readonly isEncrypted: boolean;
  readonly crc: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly headerOffset: number;
};

const copyAgain = "copy the file from its source once more; it is damaged, or was not copied whole";
const damaged = (found: string): ContainerFault => new ContainerFault(found, "a whole zip file", copyAgain);

/** A zip of a log or a spreadsheet has a handful of entries. */
const mostEntries = 2000;

/**
 * The entries of a zip file, folders left out, in the directory's order.
 * @throws ContainerFault where the file is cut off, damaged, or of a kind that is not read
 */
export async function readZipDirectory(absolutePath: string): Promise<ZipEntry[]> {
  const handle = await open(absolutePath, "r");
  try {
    const { size } = await handle.stat();
    const tail = await readAt(handle, Math.max(0, size - 65_557), Math.min(size, 65_557));
    const end = tail.lastIndexOf(Buffer.from([0x50, 0x4b, 0x05, 0x06]));
    if (end < 0 || end + 22 > tail.length) throw damaged("a zip file without its directory");
    const count = tail.readUInt16LE(end + 10);
    const length = tail.readUInt32LE(end + 12);
    const offset = tail.readUInt32LE(end + 16);
    if (count === 0xffff || offset === 0xffffffff)
      throw new ContainerFault(
        "a zip file of the large kind (zip64)",
        "a zip file of less than 4 GiB",
        "unpack it, and put the log here unpacked",
      );
    if (count > mostEntries)
      throw new ContainerFault(`${count} files in one zip file`, "one log in a zip file", "unpack it, and put each log here by itself");
    if (offset + length > size) throw damaged("a zip file whose directory lies outside it");
    return entriesOf(await readAt(handle, offset, length), count);
  } finally {
    await handle.close();
  }
}

function entriesOf(directory: Buffer, count: number): ZipEntry[] {
  const entries: ZipEntry[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    if (at + 46 > directory.length || directory.readUInt32LE(at) !== 0x02014b50) throw damaged("a zip file whose directory is damaged");
    const flags = directory.readUInt16LE(at + 8);
    const nameLength = directory.readUInt16LE(at + 28);
    const name = directory.subarray(at + 46, at + 46 + nameLength).toString((flags & 0x800) === 0 ? "latin1" : "utf8");
    if (!name.endsWith("/"))
      entries.push({
        name,
        method: directory.readUInt16LE(at + 10),
        isEncrypted: (flags & 1) === 1,
        crc: directory.readUInt32LE(at + 16),
        packedBytes: directory.readUInt32LE(at + 20),
        bytes: directory.readUInt32LE(at + 24),
        headerOffset: directory.readUInt32LE(at + 42),
      });
    at += 46 + nameLength + directory.readUInt16LE(at + 30) + directory.readUInt16LE(at + 32);
  }
  return entries;
}

/**
 * Streams one entry's bytes, unpacked.
 * @throws ContainerFault where it is encrypted, packed in another way, too large, or does not have the sum that the directory states
 */
export async function* streamEntry(absolutePath: string, entry: ZipEntry): AsyncGenerator<Uint8Array> {
  if (entry.isEncrypted)
    throw new ContainerFault(
      `"${entry.name}" behind a password`,
      "a file that is not encrypted",
      "unpack it with the password, and put the log here unpacked",
    );
  if (entry.method !== 0 && entry.method !== 8)
    throw new ContainerFault(
      `"${entry.name}" packed by method ${entry.method}`,
      "stored or deflated entries, methods 0 and 8",
      "pack it again as a plain zip file, or put the log here unpacked",
    );
  const start = await dataOffset(absolutePath, entry);
  if (entry.packedBytes === 0) return;
  const packed = createReadStream(absolutePath, { flags: "r", start, end: start + entry.packedBytes - 1 });
  const unpacked = entry.method === 0 ? packed : packed.pipe(createInflateRaw());
  packed.on("error", (error) => unpacked.destroy(error));
  let sum = 0xffffffff;
  let total = 0;
  try {
    for await (const chunk of limited(unpacked, entry.packedBytes)) {
      sum = addToCrc(sum, chunk);
      total += chunk.length;
      yield chunk;
    }
  } catch (error) {
    if (error instanceof ContainerFault) throw error;
    throw damaged(`"${entry.name}", which cannot be unpacked`);
  } finally {
    packed.destroy();
  }
  if ((sum ^ 0xffffffff) >>> 0 !== entry.crc || total !== entry.bytes)
    throw damaged(`"${entry.name}", whose bytes do not have the check sum that stands beside it`);
}

async function dataOffset(absolutePath: string, entry: ZipEntry): Promise<number> {
  const handle = await open(absolutePath, "r");
  try {
    const header = await readAt(handle, entry.headerOffset, 30);
    if (header.length < 30 || header.readUInt32LE(0) !== 0x04034b50) throw damaged(`no "${entry.name}" where the directory says it is`);
    return entry.headerOffset + 30 + header.readUInt16LE(26) + header.readUInt16LE(28);
  } finally {
    await handle.close();
  }
}

async function readAt(handle: FileHandle, offset: number, length: number): Promise<Buffer> {
  const buffer = Buffer.alloc(length);
  const { bytesRead } = await handle.read(buffer, 0, length, offset);
  return buffer.subarray(0, bytesRead);
}

const crcTable = Uint32Array.from({ length: 256 }, (_, index) => {
  let value = index;
  for (let bit = 0; bit < 8; bit++) value = (value & 1) === 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value;
});

/** CRC-32 of ISO 3309 and ITU-T V.42, reflected, as zip and gzip use it; begin with 0xffffffff and invert the last value. */
export function addToCrc(sum: number, bytes: Uint8Array): number {
  let value = sum;
  for (const byte of bytes) value = (crcTable[(value ^ byte) & 0xff] as number) ^ (value >>> 8);
  return value;
}
