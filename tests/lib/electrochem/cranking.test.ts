import { describe, expect, it } from "vitest";
import { convertCrankingAbout } from "../../../lib/electrochem/cranking.ts";

describe("cranking currents", () => {
  it("is about 1.7 times by SAE what it is by DIN, give or take 10 %", () => {
    const about = convertCrankingAbout(300, "DIN 43539-2", "SAE J537");
    expect(about?.aboutA).toBeCloseTo(510, 9);
    expect(about?.lowA).toBeCloseTo(459, 9);
    expect(about?.highA).toBeCloseTo(561, 9);
  });

  it("comes back by the way it went", () => {
    const sae = convertCrankingAbout(540, "EN 50342-1", "SAE J537")?.aboutA ?? Number.NaN;
    expect(convertCrankingAbout(sae, "SAE J537", "EN 50342-1")?.aboutA).toBeCloseTo(540, 9);
  });

  it("does not blur a figure that needs no conversion", () => {
    expect(convertCrankingAbout(540, "EN 50342-1", "EN 50342-1")).toEqual({ aboutA: 540, lowA: 540, highA: 540 });
  });

  it("has no answer where the trade has no rule", () => {
    expect(convertCrankingAbout(300, "JIS D 5301", "SAE J537")).toBeUndefined();
    expect(convertCrankingAbout(300, "not stated", "SAE J537")).toBeUndefined();
    expect(convertCrankingAbout(0, "EN 50342-1", "SAE J537")).toBeUndefined();
  });
});
