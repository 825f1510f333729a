/** What a packed file may unfold to, and the fault that it is when it does not hold to that. */

/** More than any recorder writes in a year at one row a second. */
export const largestBytes = 512 * 1024 * 1024;
/** Rows of a log pack to a tenth or a fiftieth of their size; a file that unfolds further was made to fill memory. */
export const largestRatio = 250;
/** Below this a ratio says nothing: a few equal rows pack well. */
const ratioFromBytes = 8 * 1024 * 1024;

/** A packed file or a spreadsheet that cannot be opened: what was found, what was expected, what to do. */
export class ContainerFault extends Error {
  readonly found: string;
  readonly expected: string;
  readonly mend: string;

  constructor(found: string, expected: string, mend: string) {
    super(`expected ${expected}, found ${found}`);
    this.found = found;
    this.expected = expected;
    this.mend = mend;
  }
}

/** Passes bytes on, and stops with a fault where more come out than a log can hold. */
export async function* limited(bytes: AsyncIterable<Uint8Array>, packedBytes: number): AsyncGenerator<Uint8Array> {
  let total = 0;
  for await (const chunk of bytes) {
    total += chunk.length;
    if (total > largestBytes || (total > ratioFromBytes && total > largestRatio * packedBytes))
      throw new ContainerFault(
        `${packedBytes} bytes that unfold to more than ${total - chunk.length} bytes`,
        `a packed log of at most ${largestBytes / 1024 / 1024} MiB unpacked, and at most ${largestRatio} times its packed size`,
        "unpack the log yourself, look at it, and put it here unpacked",
      );
    yield chunk;
  }
}
