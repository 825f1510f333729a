import { describe, expect, it } from "vitest";
import { frost } from "../../../../lib/judge/findings/frost.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const judged = (...densities: readonly number[]) =>
  frost.judge(contextOf({ readings: densities.map((density, i) => visit(i + 1, i, { density_1: density, acid_C: 25 })) }));

/** A first visit in the warm with a density, and a second that read a temperature alone. */
const inFrost = (density_1: number, values: Parameters<typeof visit>[2]) =>
  frost.judge(contextOf({ readings: [visit(1, -24, { density_1, acid_C: 25 }), visit(2, -1, values)] }));

describe("could it have frozen?", () => {
  it("in hard frost, at the weakest acid that was read, and warns never to charge a frozen battery", () => {
    const finding = judged(1.2, 1.1, 1.25);
    expect(finding).toMatchObject({ verdict: "in hard frost", weight: "caution", why: ["lowest density read, at visit 2"] });
    expect(finding?.sentence).toContain("Never charge a frozen battery");
    // 1.10 kg/l freezes near −8 °C by service manuals' tables.
    const freezesC = Number(/about (-\d+) °C/.exec(finding?.sentence ?? "")?.[1]);
    expect(Math.abs(freezesC - -8)).toBeLessThanOrEqual(1);
  });

  it("may have been frozen, where acid of 1.10 kg/l was met at −8 °C, its freezing point in service manuals", () => {
    expect(inFrost(1.1, { acid_C: -8 })).toMatchObject({
      verdict: "may have been frozen",
      weight: "bad",
      sentence: expect.stringContaining("Never charge a frozen battery"),
      why: [expect.stringContaining("of visit 1")],
      wouldSettle: expect.stringContaining("without charging"),
    });
  });

  it("was not frozen at −8 °C where the acid read 1.25 kg/l, which freezes near −52 °C", () => {
    expect(inFrost(1.25, { acid_C: -8 })).toBeUndefined();
  });

  it("takes the air's word only where neither acid nor battery was read, and says what that is worth", () => {
    expect(inFrost(1.1, { air_C: -15 })).toMatchObject({
      verdict: "may have been frozen",
      doubts: [expect.stringContaining("the air was read")],
    });
    expect(inFrost(1.1, { air_C: -15, battery_C: 5 })).toMatchObject({ verdict: "in hard frost" });
  });

  it("does not arise for strong acid, nor where none was read", () => {
    expect(judged(1.25)).toBeUndefined();
    expect(judged()).toBeUndefined();
  });
});
