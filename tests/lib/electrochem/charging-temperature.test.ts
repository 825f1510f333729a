import { describe, expect, it } from "vitest";
import { judgeChargingTemperature } from "../../../lib/electrochem/charging-temperature.ts";

describe("temperatures at which a battery may be charged", () => {
  it("fears frost in weak acid: trade tables freeze 1.100 near -7.5 °C and 1.150 near -15 °C (read)", () => {
    expect(judgeChargingTemperature(1.1, -10)).toBe("may be frozen");
    expect(judgeChargingTemperature(1.1, -5)).toBe("near freezing");
    expect(judgeChargingTemperature(1.15, -10)).toBe("may be charged");
    expect(judgeChargingTemperature(1.15, -18)).toBe("may be frozen");
  });

  it("fears none in strong acid, beyond the freezing table too", () => {
    expect(judgeChargingTemperature(1.265, -25)).toBe("may be charged");
    expect(judgeChargingTemperature(1.29, -30)).toBe("may be charged");
  });

  it("stops at 50 °C, and says when it does not know", () => {
    expect(judgeChargingTemperature(1.25, 50)).toBe("too hot");
    expect(judgeChargingTemperature(Number.NaN, 20)).toBe("not known");
    expect(judgeChargingTemperature(1.25, Number.NaN)).toBe("not known");
  });
});
