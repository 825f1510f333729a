import { describe, expect, it } from "vitest";
import { tellNearestKinds } from "../../../../lib/measure/stages/nearest-kinds.ts";
import type { Ends } from "../../../../lib/measure/stages/pieces.ts";

const ends = (startV: number, endV: number, startA: number, endA: number): Ends => ({
  startV,
  endV,
  startA,
  endA,
  meanV: (startV + endV) / 2,
  meanA: (startA + endA) / 2,
});

describe("the nearest kinds of a stretch that fits none", () => {
  it("are a held voltage and a rest, with what each lacks in numbers", () => {
    // 14.2 to 13.8 V is 2.9 % of 14.0 V, 1.9 times what is held; 0.2 A on average is twice what is none.
    expect(tellNearestKinds(ends(14.2, 13.8, 0.35, 0.05), 0.1)).toBe(
      'nearest are "Constant voltage, current tapering", but the voltage changed by 2.9 %, and held is up to 1.5 %; ' +
        'and "Rest", but 0.20 A flowed, and none is up to 0.10 A',
    );
  });

  it("are a held current where that is what it nearly is", () => {
    // ln(5/4.7) is 0.062, ln(13/12.6) 0.031: twice, against one and a half times.
    expect(tellNearestKinds(ends(13, 12.6, 5, 4.7), 0.1)).toMatch(/^nearest are "Constant current", but the current changed 2\.0 times/);
  });

  it("never are a held current where a logarithm has no meaning", () => {
    expect(tellNearestKinds(ends(13, 12.6, 5, -1), 0.1)).not.toContain("Constant current");
  });
});
