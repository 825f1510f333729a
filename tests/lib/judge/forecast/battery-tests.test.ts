import { describe, expect, it } from "vitest";
import { type BenchTest, benchTestOf, ownBatteryOf } from "../../../../lib/judge/forecast/battery-tests.ts";
import { forecastMode, type ModeQuestion } from "../../../../lib/judge/forecast/forecast-mode.ts";
import type { ChargerBehaviour } from "../../../../lib/project/index.ts";
import { type BenchOptions, benchStartMs, contextOf, logOf, recordingOf, visit } from "../../measure/bench.ts";

const start = visit(1, -1, { density_1: 1.15, acid_C: 25, air_C: 15 });
/** Six hours at 5 A, the voltage rising. */
const log = recordingOf(logOf([{ hours: 6, v: (h) => 12.6 + 0.2 * h, a: () => 5 }]));
const logged: BenchOptions = { readings: [start], connections: [{ onH: 0, offH: 6, recordings: [log] }] };
const testOf = (id: string, options: BenchOptions): BenchTest => benchTestOf({ ...contextOf(options), id });

describe("what a bench knows of a test's battery", () => {
  it("is its start by the last density before the charge, between the densities that its record states", () => {
    const battery = {
      fullDensity: { value: 1.28, convention: "kg/l at 25 °C" },
      emptyDensity: { value: 1.08, convention: "kg/l at 25 °C" },
    };
    const own = ownBatteryOf(testOf("a", { ...logged, battery }), []);
    expect(own?.asked.known).toMatchObject({
      ratedAh: 60,
      cells: 6,
      airC: 15,
      density: { full: expect.closeTo(1.28, 9), empty: expect.closeTo(1.08, 9) },
    });
    // By density alone 35 % of the way; the acid balance bends that a little.
    expect(own?.asked.known.startShare).toBeGreaterThan(0.3);
    expect(own?.asked.known.startShare).toBeLessThan(0.4);
  });

  it("is the log of its first charge, 30 Ah in six hours, thinned without losing charge", () => {
    const points = ownBatteryOf(testOf("a", logged), [])?.asked.points ?? [];
    const chargeAh = points.reduce((sum, { endH, currentA }, k) => sum + currentA * (endH - (points[k - 1]?.endH ?? 0)), 0);
    // The last row is a minute before the sixth hour.
    expect(chargeAh).toBeCloseTo(5 * (6 - 1 / 60), 1);
    expect(points.length).toBeLessThanOrEqual(60);
  });

  it("is learnt from no row that was read with the leads off the battery", () => {
    const off = recordingOf(
      logOf([
        { hours: 6, v: (h) => 12.6 + 0.2 * h, a: () => 5 },
        { hours: 2, v: () => 0, a: () => 0 },
      ]),
    );
    const points = ownBatteryOf(testOf("a", { ...logged, connections: [{ onH: 0, offH: 8, recordings: [off] }] }), [])?.asked.points ?? [];
    expect(points.length).toBeGreaterThan(5);
    expect(Math.min(...points.map(({ voltageV }) => voltageV))).toBeGreaterThan(12);
  });

  it("is nothing without a density before the charge, for a sealed battery, and without any log", () => {
    expect(ownBatteryOf(testOf("a", { ...logged, readings: [] }), [])).toBeUndefined();
    expect(ownBatteryOf(testOf("a", { ...logged, battery: { construction: "AGM" } }), [])).toBeUndefined();
    expect(ownBatteryOf(testOf("a", { readings: [start] }), [])).toBeUndefined();
  });

  it("takes no log that begins long after the clamps were on, since what went in before cannot be placed", () => {
    const late = recordingOf(logOf([{ hours: 6, v: () => 13, a: () => 5 }]), { startMs: benchStartMs + 11 * 60_000 });
    const test = testOf("a", { ...logged, connections: [{ onH: 0, offH: 7, recordings: [late] }] });
    expect(ownBatteryOf(test, [])).toBeUndefined();
    expect(ownBatteryOf(test, [testOf("b", logged)])).toMatchObject({ asked: { points: [] }, others: [{}] });
  });

  it("rests on the density before the charge and the charge's log, its own and the others'", () => {
    const files = ["data/tests/bench/readings.csv", "data/tests/bench/logs/log.csv"];
    const evidenceWith = (bench: BenchTest[]) => ownBatteryOf(testOf("a", logged), bench)?.evidence.map(({ file }) => file);
    expect(evidenceWith([])).toEqual(files);
    expect(evidenceWith([testOf("b", logged)])).toEqual([...files, ...files]);
    expect(evidenceWith([testOf("g", { ...logged, test: { battery: "other" } })])).toEqual(files);
  });

  it("takes other tests of the same battery only, four at most, and never the test itself", () => {
    const test = testOf("a", logged);
    const bench = [
      test,
      ...["b", "c", "d", "e", "f"].map((id) => testOf(id, logged)),
      testOf("g", { ...logged, test: { battery: "other" } }),
    ];
    expect(ownBatteryOf(test, bench)?.others).toHaveLength(4);
    expect(ownBatteryOf(test, [testOf("g", { ...logged, test: { battery: "other" } })])?.others).toEqual([]);
  });
});

describe("a battery of the bench forecast once more", () => {
  const behaviour: ChargerBehaviour = {
    steps: [{ kind: "constant-voltage", voltageV: { low: 14.4, high: 14.4 }, limitA: { low: 5, high: 5 }, end: {} }],
    efficiency: { low: 0.8, high: 0.8 },
    unknowns: [],
  };
  const ask = (ownBatteries: ModeQuestion["ownBatteries"]) =>
    forecastMode({
      behaviour,
      nominalVoltageV: 6,
      claimedAh: null,
      kinds: [],
      compensation: { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 },
      statedCompensationMVPerK: 0,
      ownBatteries,
    }).ownBatteries;

  it("takes no less than what is missing at the charger's full current, and each mark no sooner than the one before", () => {
    const own = ownBatteryOf(testOf("a", logged), []);
    if (own === undefined) throw new Error("the bench knows the battery");
    const [hours] = ask([{ ...own, construction: "flooded-calcium" }]);
    const medians = (hours ?? []).map(({ hours: { value } }) => value ?? Number.POSITIVE_INFINITY);
    expect(medians).toHaveLength(3);
    // 60 Ah, 34 % full by density, to 80 % at 5 A; a capacity of half the label would halve it.
    expect(medians[0]).toBeGreaterThan((0.5 * 60 * (0.8 - 0.4)) / 5);
    expect([...medians].sort((a, b) => a - b)).toEqual(medians);
  });

  it("is null where its logs are too short to tell anything", () => {
    const own = ownBatteryOf(testOf("a", logged), []);
    if (own === undefined) throw new Error("the bench knows the battery");
    expect(ask([{ asked: { ...own.asked, points: own.asked.points.slice(0, 2) }, others: [], construction: "flooded" }])).toEqual([null]);
  });

  it("has half the water and half the reserve on 6 V: three cells run dry no sooner than six", () => {
    const topUp = (nominalVoltageV: number) =>
      forecastMode({
        behaviour: {
          ...behaviour,
          steps: [
            {
              kind: "constant-voltage",
              voltageV: { low: 1.15 * nominalVoltageV, high: 1.15 * nominalVoltageV },
              limitA: { low: 5, high: 5 },
              end: {},
            },
          ],
        },
        nominalVoltageV,
        claimedAh: null,
        kinds: [],
        compensation: { leastMVPerKPerCell: -3, mostMVPerKPerCell: -5, fromC: 5, toC: 40 },
        statedCompensationMVPerK: 0,
        ownBatteries: [],
      }).season.map(({ topUpDays }) => topUpDays?.value ?? Number.NaN);
    const [six, twelve] = [topUp(6), topUp(12)];
    // Both are held at 2.30 V a cell; only the warmth that a battery gives off differs a little with its size.
    for (const [place, days] of twelve.entries()) expect((six[place] ?? 0) / days).toBeCloseTo(1, 1);
  });
});
