import { describe, expect, it } from "vitest";
import { GrowingFloats, GrowingRows } from "../../../lib/read/columns.ts";

describe("growing columns", () => {
  it.each([0, 1, 512, 513, 10_000])("keeps %d values in order across its doublings", (count) => {
    const floats = new GrowingFloats();
    const rows = new GrowingRows();
    for (let i = 0; i < count; i++) {
      floats.push(i / 8);
      rows.push(i, i / 2, i / 4, i + 1);
    }
    expect(floats.length).toBe(count);
    expect(floats.finish()).toEqual(Float64Array.from({ length: count }, (_, i) => i / 8));
    expect(rows.length).toBe(count);
    expect(rows.finish()).toEqual({
      timesS: Float64Array.from({ length: count }, (_, i) => i),
      voltagesV: Float64Array.from({ length: count }, (_, i) => i / 2),
      currentsA: Float64Array.from({ length: count }, (_, i) => i / 4),
      lines: Uint32Array.from({ length: count }, (_, i) => i + 1),
    });
  });

  it("grows beyond what was reckoned with", () => {
    const rows = new GrowingRows(600);
    for (let i = 0; i < 2000; i++) rows.push(i, i, i, i);
    expect(rows.finish().lines).toEqual(Uint32Array.from({ length: 2000 }, (_, i) => i));
  });

  it("keeps a missing value missing", () => {
    const floats = new GrowingFloats();
    floats.push(Number.NaN);
    expect([...floats.finish()]).toEqual([Number.NaN]);
  });
});
