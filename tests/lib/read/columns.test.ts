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

  it.each([0, 3, 511, 2000])("takes %d rows that are put into its room, behind those it has", (count) => {
    const floats = new GrowingFloats();
    const rows = new GrowingRows();
    floats.push(-1);
    rows.push(-1, -1, -1, 7);
    const values = floats.room(count);
    const { timesS, voltagesV, currentsA, lines } = rows.room(count);
    for (let i = 1; i <= count; i++) {
      for (const column of [values, timesS, voltagesV, currentsA]) column[i] = i;
      lines[i] = 7 + i;
    }
    expect(floats.length).toBe(1);
    expect([...floats.took(count)]).toEqual(Array.from({ length: count }, (_, i) => i + 1));
    rows.took(count);
    floats.push(-2);
    rows.push(-2, -2, -2, 1);
    expect(floats.finish()).toEqual(Float64Array.of(-1, ...values.subarray(1, count + 1), -2));
    expect(rows.finish().timesS).toEqual(floats.finish());
    expect(rows.finish().lines).toEqual(Uint32Array.of(7, ...lines.subarray(1, count + 1), 1));
  });

  it("keeps a missing value missing", () => {
    const floats = new GrowingFloats();
    floats.push(Number.NaN);
    expect([...floats.finish()]).toEqual([Number.NaN]);
  });
});
