import { describe, expect, it } from "vitest";
import { restVoltageFromDensity } from "../../../lib/electrochem/rest-voltage.ts";
import { beliefsOf } from "../../../lib/project/battery-priors.ts";
import { forecastCharge } from "../../../lib/project/forecast.ts";
import { findHoldingThresholds, samplesBeforeFirstRestart } from "../../../lib/project/holding-thresholds.ts";
import { forecastReference } from "../../../lib/project/reference-case.ts";
import { startShareFromDensity, startShareFromRestVoltage } from "../../../lib/project/start-share.ts";
import { behaviourIUoU, density } from "./cases.ts";

const chargeCase = { ratedAh: 60, cells: 6, density, startShare: 0.3, startShareUncertainty: 0.05, airC: 20, horizonH: 48 };
const battery = { beliefs: beliefsOf("flooded", "used") };

describe("a forecast", () => {
  const forecast = forecastCharge(battery, behaviourIUoU(6), chargeCase);

  it("is the same, digit for digit, when made again", () => {
    expect(forecastCharge(battery, behaviourIUoU(6), chargeCase)).toEqual(forecast);
  });

  it("keeps the order of its marks in every draw, and its shares of draws", () => {
    for (const { hoursTo } of forecast.draws) {
      expect(hoursTo["80 %"]).toBeLessThanOrEqual(hoursTo["95 %"]);
      expect(hoursTo["95 %"]).toBeLessThanOrEqual(hoursTo.full);
    }
    expect(forecast.reaches["80 %"]).toBe(1);
    expect(forecast.reaches.full).toBeLessThanOrEqual(forecast.reaches["95 %"]);
  });

  it("gets wider with a less certain start", () => {
    const width = (startShareUncertainty: number): number => {
      const { middle80 } = forecastCharge(battery, behaviourIUoU(6), { ...chargeCase, startShareUncertainty }).hoursTo["80 %"];
      return middle80.high - middle80.low;
    };
    expect(width(0.1)).toBeGreaterThan(width(0.02));
  });

  it("takes more from the mains than reaches the battery, by the efficiency's bounds", () => {
    for (const { whole } of forecast.draws) {
      const share = whole.dcWh / (whole.mainsWh - 2 * whole.hours);
      expect(share).toBeGreaterThanOrEqual(0.75 - 1e-9);
      expect(share).toBeLessThanOrEqual(0.85 + 1e-9);
    }
  });

  it("lets a stronger charger win every draw to 80 % on the reference battery", () => {
    const [strong, weak] = [forecastReference(behaviourIUoU(8)), forecastReference(behaviourIUoU(4))];
    for (const [k, { hoursTo }] of strong.draws.entries()) expect(hoursTo["80 %"]).toBeLessThan(weak.draws[k]?.hoursTo["80 %"] ?? 0);
  });
});

describe("a start", () => {
  it("is empty and full at the battery's own two densities, and the two ways of reading it agree", () => {
    expect(startShareFromDensity(1.12, 0.002, density).share).toBe(0);
    expect(startShareFromDensity(1.28, 0.002, density).share).toBe(1);
    expect(startShareFromDensity(1.1, 0.002, density).share).toBe(0);
    expect(startShareFromDensity(1.3, 0.002, density).share).toBe(1);
    const byDensity = startShareFromDensity(1.2, 0.002, density);
    const byVoltage = startShareFromRestVoltage(restVoltageFromDensity(1.2, 6), 0.01, 6, density);
    expect(byVoltage.share).toBeCloseTo(byDensity.share, 6);
    expect(startShareFromDensity(Number.NaN, 0.002, density).share).toBeNaN();
  });
});

describe("holding thresholds in a log", () => {
  const currentsA = Float64Array.of(5, 5, 5, 0, 0, 0, 5, 0, 0, 0, 5, 0);
  const voltagesV = [12.6, 13.5, 14.4, 13.5, 13.1, 12.9, 14.3, 13.4, 13, 12.92, 14.5, 13.6];

  it("are the lowest voltage of pauses that ended, and the highest of the spells", () => {
    expect(findHoldingThresholds(voltagesV, currentsA)).toEqual({ wakeV: 12.91, stopV: 14.5, rounds: 2 });
    expect(samplesBeforeFirstRestart(currentsA)).toBe(3);
  });

  it("are none in a charge that never paused, nor in the tail of a float", () => {
    expect(findHoldingThresholds([12, 13, 14], [5, 5, 5])).toBeUndefined();
    expect(findHoldingThresholds([14.4, 13.6, 13.6, 13.6], [5, 0, 0.1, 0])).toBeUndefined();
    expect(samplesBeforeFirstRestart(Float64Array.of(5, 0, 0.1, 0))).toBe(4);
  });
});
