/** So many values at least; a short log needs no more. */
const leastCapacity = 512;

/** A column of doubles that grows as a log is read; doubling keeps the cost of each value constant. */
export class GrowingFloats {
  #values: Float64Array;
  #length = 0;

  /** @param likely  how many values are about to come: room that is not used costs no memory, since nothing has been written there */
  constructor(likely = 0) {
    this.#values = new Float64Array(Math.max(leastCapacity, likely));
  }

  push(value: number): void {
    if (this.#length === this.#values.length) this.#values = doubled(this.#values, new Float64Array(2 * this.#length));
    this.#values[this.#length++] = value;
  }

  get length(): number {
    return this.#length;
  }

  /** The column itself, with room for so many more values behind those it has: they are put in from `length` on, and then told to `took`. */
  room(most: number): Float64Array {
    while (this.#length + most > this.#values.length) this.#values = doubled(this.#values, new Float64Array(2 * this.#values.length));
    return this.#values;
  }

  /** Counts in values that were put into the room, and gives them back. */
  took(count: number): Float64Array {
    this.#length += count;
    return this.#values.subarray(this.#length - count, this.#length);
  }

  /** The values so far, sharing memory with this column: read once, when reading is done. */
  finish(): Float64Array {
    return this.#values.subarray(0, this.#length);
  }
}

export type RowColumns = {
  readonly timesS: Float64Array;
  readonly voltagesV: Float64Array;
  readonly currentsA: Float64Array;
  readonly lines: Uint32Array;
};

/** The columns that every log has, side by side, so that a row is put in with one look at whether there is room. */
export class GrowingRows {
  #timesS: Float64Array;
  #voltagesV: Float64Array;
  #currentsA: Float64Array;
  #lines: Uint32Array;
  #length = 0;

  constructor(likely = 0) {
    const capacity = Math.max(leastCapacity, likely);
    this.#timesS = new Float64Array(capacity);
    this.#voltagesV = new Float64Array(capacity);
    this.#currentsA = new Float64Array(capacity);
    this.#lines = new Uint32Array(capacity);
  }

  push(timeS: number, voltageV: number, currentA: number, line: number): void {
    const at = this.#length;
    if (at === this.#lines.length) this.#grow();
    this.#timesS[at] = timeS;
    this.#voltagesV[at] = voltageV;
    this.#currentsA[at] = currentA;
    this.#lines[at] = line;
    this.#length = at + 1;
  }

  /** The columns themselves, with room for so many more rows behind those they have: see `GrowingFloats.room`. */
  room(most: number): RowColumns {
    while (this.#length + most > this.#lines.length) this.#grow();
    return { timesS: this.#timesS, voltagesV: this.#voltagesV, currentsA: this.#currentsA, lines: this.#lines };
  }

  /** Counts in rows that were put into the room. */
  took(count: number): void {
    this.#length += count;
  }

  #grow(): void {
    const capacity = 2 * this.#lines.length;
    this.#timesS = doubled(this.#timesS, new Float64Array(capacity));
    this.#voltagesV = doubled(this.#voltagesV, new Float64Array(capacity));
    this.#currentsA = doubled(this.#currentsA, new Float64Array(capacity));
    this.#lines = doubled(this.#lines, new Uint32Array(capacity));
  }

  get length(): number {
    return this.#length;
  }

  /** The rows so far, sharing memory with these columns: read once, when reading is done. */
  finish(): RowColumns {
    return {
      timesS: this.#timesS.subarray(0, this.#length),
      voltagesV: this.#voltagesV.subarray(0, this.#length),
      currentsA: this.#currentsA.subarray(0, this.#length),
      lines: this.#lines.subarray(0, this.#length),
    };
  }
}

function doubled<A extends Float64Array | Uint32Array>(values: A, larger: A): A {
  larger.set(values);
  return larger;
}
