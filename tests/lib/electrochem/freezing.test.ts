import { describe, expect, it } from "vitest";
import { densityOfAcid } from "../../../lib/electrochem/acid.ts";
import { freezingPointC, frostWarningDensity } from "../../../lib/electrochem/freezing.ts";
import { densityAt25C } from "../../../lib/electrochem/hydrometer.ts";

describe("freezing point", () => {
  it.each([
    // Trade tables by specific gravity at 80 °F (read in two or three of them), °C. The tolerance is how far they differ, and what their
    // printed gravity leaves open: 0.002 on the steep part of the curve is 1 to 3 K.
    [1.05, -3, 1],
    [1.1, -7.5, 1],
    [1.15, -15, 1],
    [1.2, -27, 2],
    [1.225, -37, 3],
    [1.25, -52, 3],
    [1.265, -59, 3],
    [1.28, -68, 3],
  ])("of acid reading %f is %f ± %f °C", (reading, expectedC, toleranceC) => {
    const { densityAt25C: density } = densityAt25C(reading, "SG 80/80 °F", undefined, true);
    expect(Math.abs(freezingPointC(density) - expectedC)).toBeLessThanOrEqual(toleranceC);
  });

  it("falls as the acid gets stronger", () => {
    let last = 1;
    for (let percent = 0; percent <= 37; percent += 0.5) {
      const here = freezingPointC(densityOfAcid(percent / 100, 25));
      expect(here).toBeLessThan(last);
      last = here;
    }
  });

  it("warns before a cold night of -15 °C can freeze the acid", () => {
    expect(freezingPointC(frostWarningDensity)).toBeLessThan(-15);
  });

  it("is NaN beyond its table", () => {
    expect(freezingPointC(1.35)).toBeNaN();
    expect(freezingPointC(Number.NaN)).toBeNaN();
  });
});
