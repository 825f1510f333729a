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
    if (this.#length === this.#values.length) {
      const larger = new Float64Array(this.#values.length * 2);
      larger.set(this.#values);
      this.#values = larger;
    }
    this.#values[this.#length++] = value;
  }

  get length(): number {
    return this.#length;
  }

  /** The values so far, sharing memory with this column: read once, when reading is done. */
  finish(): Float64Array {
    return this.#values.subarray(0, this.#length);
  }
}

/** As GrowingFloats, for line numbers. */
export class GrowingLines {
  #values: Uint32Array;
  #length = 0;

  constructor(likely = 0) {
    this.#values = new Uint32Array(Math.max(leastCapacity, likely));
  }

  push(value: number): void {
    if (this.#length === this.#values.length) {
      const larger = new Uint32Array(this.#values.length * 2);
      larger.set(this.#values);
      this.#values = larger;
    }
    this.#values[this.#length++] = value;
  }

  finish(): Uint32Array {
    return this.#values.subarray(0, this.#length);
  }
}
