import { describe, expect, it } from "vitest";
import { beliefsOf } from "../../../lib/project/battery-priors.ts";
import { type FloatWindow, holdSeason, placeIn, windowAt } from "../../../lib/project/season.ts";
import { behaviourIUoU, density } from "./cases.ts";

const window: FloatWindow = { at25C: { low: 13.2, high: 13.8 }, leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 };
const question = {
  beliefs: beliefsOf("flooded", "used"),
  construction: "flooded",
  ratedAh: 60,
  cells: 6,
  density,
  window,
  compensationMVPerKPerCell: { low: 0, high: 0 },
  reserveG: { low: 300, high: 300 },
} as const;

describe("a float window", () => {
  it("moves up in the cold and down in the warm, by 0.18 to 0.30 V for 10 K on 12 V, and no further than its ends", () => {
    expect(windowAt(window, 15, 6).low).toBeCloseTo(13.2 + 0.18, 9);
    expect(windowAt(window, 15, 6).high).toBeCloseTo(13.8 + 0.3, 9);
    expect(windowAt(window, 35, 6).low).toBeCloseTo(13.2 - 0.3, 9);
    expect(windowAt(window, -20, 6)).toEqual(windowAt(window, 5, 6));
  });

  it("tells inside, below, above and across", () => {
    const at = (low: number, high: number) => placeIn({ low, high }, { low: 13, high: 14 });
    expect([at(13.2, 13.8), at(12, 12.9), at(14.1, 14.2), at(13.9, 14.1)]).toEqual(["inside", "below", "above", "partly"]);
  });
});

describe("a season held at 13.6 V", () => {
  const season = holdSeason(behaviourIUoU(5), question);

  it("costs the more water the warmer: e-fold for each 17 K of gassing at one voltage (Schiffer et al. 2007)", () => {
    const [cold, cellar, warm] = season.map(({ waterG }) => waterG?.median);
    // 15 K are a factor of 2.5 by exp(0.06·ΔT); what the battery warms itself adds a little.
    expect((cellar ?? 0) / (cold ?? 1)).toBeGreaterThan(2.2);
    expect((cellar ?? 0) / (cold ?? 1)).toBeLessThan(3.2);
    expect(warm ?? 0).toBeGreaterThan(cellar ?? 0);
  });

  it("needs at least the standby: 2 W over 30 days is 1.44 kWh (definition)", () => {
    for (const { mainsKWh } of season) expect(mainsKWh?.middle95.low).toBeGreaterThan(1.44);
  });

  it("names the days until the reserve is used up, and none for a sealed battery", () => {
    const [, cellar] = season;
    expect((cellar?.topUpDays?.median ?? 0) * (cellar?.waterG?.median ?? 0)).toBeCloseTo(30 * 300, -3);
    expect(holdSeason(behaviourIUoU(5), { ...question, construction: "AGM" })[0]?.topUpDays).toBeNull();
  });

  it("holds too little in the cold and suits the cellar, being not compensated", () => {
    expect(season.map(({ inWindow }) => inWindow)).toEqual(["inside", "inside", "inside"]);
    expect(holdSeason(behaviourIUoU(5), { ...question, window: { ...window, at25C: { low: 13.5, high: 13.8 } } })[0]?.inWindow).toBe(
      "below",
    );
  });

  it("counts an on-off charger's restarts by the day, and stretches its days to a month", () => {
    const onOff = {
      ...behaviourIUoU(5),
      steps: [...behaviourIUoU(5).steps.slice(0, 1), { kind: "off" as const, wakeBelowV: { low: 12.85, high: 12.85 }, wakeTo: 0 }],
    };
    const [, cellar] = holdSeason(onOff, question);
    expect(cellar?.heldV).toBeNull();
    // 2 W of standby alone are 1.44 kWh in 30 days, whatever was simulated.
    expect(cellar?.mainsKWh?.middle95.low).toBeGreaterThan(1.44);
    expect(cellar?.mainsKWh?.middle95.high).toBeLessThan(4);
    // Above the rest voltage of a full battery it must come on at least once a day.
    expect(cellar?.restartsPerDay?.median).toBeGreaterThan(1);
  });

  it("holds no voltage where the charger switches off for good, and counts no restart", () => {
    const off = { ...behaviourIUoU(5), steps: [...behaviourIUoU(5).steps.slice(0, 1), { kind: "off" as const }] };
    expect(holdSeason(off, question)[1]).toMatchObject({ heldV: null, inWindow: "holds no voltage", restartsPerDay: { median: 0 } });
  });

  it("puts a charger above the window that goes on and off without ever sinking into it", () => {
    const wakeBelowV = { low: 14.6, high: 14.6 };
    const high = {
      ...behaviourIUoU(5),
      steps: [
        { kind: "constant-current" as const, currentA: { low: 1, high: 1 }, untilV: { low: 15.2, high: 15.2 }, end: {} },
        { kind: "off" as const, wakeBelowV, wakeTo: 0 },
      ],
    };
    expect(holdSeason(high, question)[1]).toMatchObject({ inWindow: "above", heldV: { low: 14.6, high: 15.2 } });
  });

  it("says neither off nor nothing where the record ends before the charger does", () => {
    const [limit] = behaviourIUoU(5).steps;
    for (const end of [{}, { belowA: { low: 0, high: 0.5 } }]) {
      const open = {
        ...behaviourIUoU(5),
        steps: [...(limit?.kind === "constant-voltage" ? [{ ...limit, end }] : []), { kind: "off" as const }],
      };
      const unknown = { heldV: null, inWindow: "not known", mainsKWh: null, waterG: null, restartsPerDay: null, topUpDays: null };
      expect(holdSeason(open, question)).toMatchObject([unknown, unknown, unknown]);
    }
  });
});
