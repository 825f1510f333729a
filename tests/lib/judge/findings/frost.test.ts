import { describe, expect, it } from "vitest";
import { frost } from "../../../../lib/judge/findings/frost.ts";
import { contextOf, visit } from "../../measure/bench.ts";

const judged = (...densities: readonly number[]) =>
  frost.judge(contextOf({ readings: densities.map((density, i) => visit(i + 1, i, { density_1: density, acid_C: 25 })) }));

describe("could it have frozen?", () => {
  it("in hard frost, at the weakest acid that was read, and warns never to charge a frozen battery", () => {
    const finding = judged(1.2, 1.1, 1.25);
    expect(finding).toMatchObject({ verdict: "in hard frost", weight: "caution", why: ["lowest density read, at visit 2"] });
    expect(finding?.sentence).toContain("Never charge a frozen battery");
    // 1.10 kg/l freezes near −8 °C by service manuals' tables.
    const freezesC = Number(/about (-\d+) °C/.exec(finding?.sentence ?? "")?.[1]);
    expect(Math.abs(freezesC - -8)).toBeLessThanOrEqual(1);
  });

  it("does not arise for strong acid, nor where none was read", () => {
    expect(judged(1.25)).toBeUndefined();
    expect(judged()).toBeUndefined();
  });
});
