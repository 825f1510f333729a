import { describe, expect, it } from "vitest";
import { GrowingFloats, GrowingLines } from "../../../lib/read/columns.ts";

describe("growing columns", () => {
  it.each([0, 1, 4096, 4097, 10_000])("keeps %d values in order across its doublings", (count) => {
    const floats = new GrowingFloats();
    const lines = new GrowingLines();
    for (let i = 0; i < count; i++) {
      floats.push(i / 8);
      lines.push(i + 1);
    }
    expect(floats.length).toBe(count);
    expect(floats.finish()).toEqual(Float64Array.from({ length: count }, (_, i) => i / 8));
    expect(lines.finish()).toEqual(Uint32Array.from({ length: count }, (_, i) => i + 1));
  });

  it("keeps a missing value missing", () => {
    const floats = new GrowingFloats();
    floats.push(Number.NaN);
    expect([...floats.finish()]).toEqual([Number.NaN]);
  });
});
