import { open } from "node:fs/promises";

/**
 * Finds how a text file's bytes are encoded: its byte order mark, else UTF-8 where all the bytes looked at are valid, else
 * UTF-16 where every other byte is zero, else `windows-1252`.
 *
 * Guessing between single-byte encodings is left out on purpose: a number reads the same in each, and only a unit sign differs.
 */
export function detectEncoding(head: Uint8Array): string {
  if (head[0] === 0xef && head[1] === 0xbb && head[2] === 0xbf) return "utf-8";
  if (head[0] === 0xff && head[1] === 0xfe) return "utf-16le";
  if (head[0] === 0xfe && head[1] === 0xff) return "utf-16be";
  const zeroes = [0, 0];
  for (let i = 0; i < head.length; i++) if (head[i] === 0) zeroes[i % 2] = (zeroes[i % 2] ?? 0) + 1;
  if ((zeroes[1] ?? 0) > head.length / 4) return "utf-16le";
  if ((zeroes[0] ?? 0) > head.length / 4) return "utf-16be";
  return isUtf8(head) ? "utf-8" : "windows-1252";
}

/** Whether the bytes are UTF-8, letting a character cut off at the very end pass. */
function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder("utf-8", { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}

/** The first bytes of a file, at most `length` of them. */
export async function readHead(absolutePath: string, length: number): Promise<Uint8Array> {
  const handle = await open(absolutePath, "r");
  try {
    const buffer = new Uint8Array(length);
    const { bytesRead } = await handle.read(buffer, 0, length, 0);
    return buffer.subarray(0, bytesRead);
  } finally {
    await handle.close();
  }
}

const chunkLength = 1 << 18;

/**
 * A plain file's bytes, streamed; while one chunk is looked at the next one is read.
 * Two buffers are used by turns, so that a large file fills no memory: a chunk holds until the next one is asked for.
 */
export async function* bytesOfFile(absolutePath: string): AsyncGenerator<Uint8Array> {
  const handle = await open(absolutePath, "r");
  const read = (buffer: Uint8Array) => {
    const begun = handle.read(buffer, 0, chunkLength, null);
    // A fault is thrown where the chunk is asked for; until then it must not count as unhandled.
    begun.catch(() => undefined);
    return begun;
  };
  let [present, next] = [new Uint8Array(chunkLength), new Uint8Array(chunkLength)];
  let reading = read(present);
  try {
    for (;;) {
      const { bytesRead } = await reading;
      if (bytesRead === 0) return;
      reading = read(next);
      yield present.subarray(0, bytesRead);
      [present, next] = [next, present];
    }
  } finally {
    // A file that is closed under a read would fail it.
    await reading.catch(() => undefined);
    await handle.close();
  }
}

/** The first bytes of a stream, at most `length` of them; the rest is not waited for. */
export async function headOf(bytes: AsyncIterable<Uint8Array>, length: number): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  let left = length;
  for await (const chunk of bytes) {
    // A copy, since a chunk holds only until the next one.
    const taken = new Uint8Array(chunk.subarray(0, left));
    parts.push(taken);
    left -= taken.length;
    if (left === 0) break;
  }
  return parts.length === 1 ? (parts[0] as Uint8Array) : Buffer.concat(parts);
}

/**
 * Decodes streamed bytes; the byte order mark is taken off.
 * @param isInside  whether the bytes begin inside a file, where U+FEFF is no byte order mark and is left
 * @throws TypeError where the bytes are not of that encoding
 */
export async function* decode(bytes: AsyncIterable<Uint8Array>, encoding: string, isInside = false): AsyncGenerator<string> {
  const decoder = isInside ? decoderInside(encoding) : new TextDecoder(encoding, { fatal: true });
  for await (const chunk of bytes) {
    const text = decoder.decode(chunk, { stream: true });
    if (text.length > 0) yield text;
  }
  const rest = decoder.decode();
  if (rest.length > 0) yield rest;
}

/** A decoder for bytes from inside a file, where U+FEFF is no byte order mark. Only UTF-8 is told so: Node garbles one-byte encodings then. */
export function decoderInside(encoding: string): TextDecoder {
  return new TextDecoder(encoding, { fatal: true, ignoreBOM: new TextDecoder(encoding).encoding === "utf-8" });
}

/** Lines of streamed text without their endings; `\r\n`, `\n` and `\r` all end a line, and what stands behind the last of them is a line, if an empty one. */
export async function* linesOf(texts: AsyncIterable<string>): AsyncGenerator<string> {
  let rest = "";
  for await (const text of texts) {
    rest += text;
    const lines = rest.split(/\r\n|\n|\r(?!$)/);
    rest = lines.pop() ?? "";
    yield* lines;
  }
  if (!rest.endsWith("\r")) yield rest;
  else yield* [rest.slice(0, -1), ""];
}

/** Streams a plain file's text, decoded. */
export function decodeFile(absolutePath: string, encoding: string): AsyncGenerator<string> {
  return decode(bytesOfFile(absolutePath), encoding);
}

/** Streams a plain file's lines. */
export function linesOfFile(absolutePath: string, encoding: string): AsyncGenerator<string> {
  return linesOf(decodeFile(absolutePath, encoding));
}
