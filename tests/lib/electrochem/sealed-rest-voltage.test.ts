import { describe, expect, it } from "vitest";
import { restVoltageFromDensity } from "../../../lib/electrochem/rest-voltage.ts";
import { sealedRestOffset } from "../../../lib/electrochem/sealed-rest-voltage.ts";

describe("rest voltage of sealed batteries", () => {
  it("holds a maker's 13.0 V for a full AGM battery (read), above a flooded one of 1.265 to 1.28 kg/l, within its width", () => {
    const { offsetV, standardUncertaintyV } = sealedRestOffset("AGM", 6);
    const halfWidthV = standardUncertaintyV * Math.sqrt(3);
    const highest = restVoltageFromDensity(1.28, 6) + offsetV + halfWidthV;
    const lowest = restVoltageFromDensity(1.265, 6) + offsetV - halfWidthV;
    // The other source gives 0.10 to 0.15 V above flooded, so 12.79 to 12.95 V.
    expect(highest).toBeGreaterThanOrEqual(12.97);
    expect(lowest).toBeLessThan(12.79);
  });

  it("goes with the number of cells", () => {
    expect(sealedRestOffset("gel", 3).offsetV).toBeCloseTo(sealedRestOffset("gel", 6).offsetV / 2, 12);
    expect(sealedRestOffset("AGM", 0).offsetV).toBeNaN();
    expect(sealedRestOffset("AGM", 2.5).standardUncertaintyV).toBeNaN();
  });
});
