import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import { toFigure } from "../../../../lib/measure/define.ts";
import { densityByRestVoltage } from "../../../../lib/measure/figures/density-by-rest-voltage.ts";
import { instrument } from "../../../../lib/nouns/instrument.ts";
import { test } from "../../../../lib/nouns/test.ts";
import { parseReadings } from "../../../../lib/read/readings.ts";
import { benchInstruments, contextOf, valueIn, visit } from "../bench.ts";

function at(values: Parameters<typeof visit>[2], options: Parameters<typeof contextOf>[0] = {}) {
  const context = contextOf({ ...options, readings: [visit(1, 0, values)] });
  const reading = context.readings[0];
  if (reading === undefined) throw new Error("the visit is missing");
  return densityByRestVoltage.compute({ context, reading });
}

const rested = { rest_h: 24, battery_C: 25 };

describe("density by rest voltage", () => {
  it.each([
    ["W055", 12.7, 1.2669],
    ["W056", 12.4, 1.2132],
    ["W057", 12.2, 1.1756],
    ["W058", 12.0, 1.1374],
  ])("is what %s has for %s V: %s kg/l, within its 0.001", (_, rest_V, expected) => {
    expect(Math.abs(valueIn(at({ ...rested, rest_V })) - expected)).toBeLessThan(0.001);
  });

  it("tells the trade's rule and its error beside it: at 1.20 kg/l 14.8 mV a cell too low (W059), read backwards 0.015 too much", () => {
    const words = at({ ...rested, rest_V: 6 * (1.2 + 0.84 + 0.0148) }).doubts?.join(" ") ?? "";
    const [, rule, error] = /would say (1\.\d{3}) kg\/l, (0\.\d{3}) more/.exec(words) ?? [];
    expect(Number(rule)).toBeCloseTo(1.2148, 3);
    // W059 holds to 0.5 mV a cell, which is 0.0005 kg/l by the rule.
    expect(Math.abs(Number(error) - 0.0148)).toBeLessThanOrEqual(0.001);
  });

  it("carries the voltmeter's error over the curve's slope: 0.01 V on 12 V is about 0.0018 kg/l (docs/electrochemistry.md)", () => {
    const by = (plusMinus: number): number => {
      const voltmeter = { ...benchInstruments.voltmeter, measures: { voltage: { plusMinus, from: "data sheet" as const } } };
      const outcome = at({ ...rested, rest_V: 12.7 }, { instruments: { voltmeter } });
      if (!("value" in outcome) || outcome.standardUncertainty === undefined) throw new Error("no uncertainty");
      return outcome.standardUncertainty;
    };
    const ofMeter = Math.sqrt(by(0.1) ** 2 - by(0) ** 2);
    expect(ofMeter).toBeCloseTo((0.1 / 0.01 / Math.sqrt(3)) * 0.0018, 3);
    // The curve itself is within about 2 mV a cell, so even a perfect meter leaves 0.002/√3 · 1 kg/l a volt and cell.
    expect(by(0)).toBeGreaterThan(0.001);
  });

  it("is less sure where nobody read the battery's temperature, and says so", () => {
    const unread = at({ rest_V: 12.7, rest_h: 24 });
    const read = at({ ...rested, rest_V: 12.7 });
    if (!("value" in unread) || !("value" in read)) throw new Error("no value");
    expect(unread.standardUncertainty ?? 0).toBeGreaterThan(read.standardUncertainty ?? Number.POSITIVE_INFINITY);
    expect(unread.doubts?.join(" ")).toContain("temperature was not read");
  });

  it("allows for surface charge below the 24 h of IEC 60095-1 after a charge: 0.05 V at 6 h, 0.0018 kg/l for each 0.01 V; not before one", () => {
    const readAt = (atH: number, rest_h: number) => {
      const context = contextOf({ readings: [visit(1, atH, { rest_V: 12.7, battery_C: 25, rest_h })] });
      const [reading] = context.readings;
      if (reading === undefined) throw new Error("the visit is missing");
      return toFigure(densityByRestVoltage, "reading/1", { context, reading }, 2);
    };
    const rested = readAt(34, 24);
    const short = readAt(16, 6);
    expect(short).toMatchObject({ value: rested.value, high: expect.closeTo(rested.high ?? Number.NaN, 12) });
    expect((rested.low ?? Number.NaN) - (short.low ?? Number.NaN)).toBeCloseTo(5 * 0.0018, 3);
    expect(short.doubts.join(" ")).toContain("up to 0.05 V of surface charge may be left");
    expect(readAt(14, 4).low).toBeLessThan(short.low ?? Number.NaN);
    expect(rested.doubts.join(" ")).not.toContain("surface charge");
    expect(readAt(-1, 6)).toMatchObject({ low: expect.closeTo(rested.low ?? Number.NaN, 12) });
  });

  it("is absent before the least rest, or where nobody noted any, with why", () => {
    expect(at({ rest_V: 12.9, rest_h: 1 })).toMatchObject({
      absent: "cannot tell",
      why: expect.stringContaining("not rested: 1 h of at least 4 h"),
    });
    expect(at({ rest_V: 12.9 })).toMatchObject({ absent: "cannot tell", why: expect.stringContaining("nobody noted") });
    const site = { rules: { leastRestH: 24 } };
    expect(at({ rest_V: 12.7, rest_h: 6 }, { site })).toMatchObject({ why: expect.stringContaining("of at least 24 h") });
  });

  it("is absent for a sealed battery, with why: starved acid, another offset", () => {
    expect(at({ ...rested, rest_V: 12.9 }, { battery: { construction: "AGM" } })).toMatchObject({
      absent: "not applicable",
      why: expect.stringContaining("0.10 to 0.15 V higher"),
    });
  });

  it("is absent for a voltage that no whole battery has, and where none was read", () => {
    expect(at({ ...rested, rest_V: 10.6 })).toMatchObject({ absent: "cannot tell" });
    expect(at({ rest_h: 24 })).toMatchObject({ absent: "not measured" });
  });
});

describe("density by rest voltage, against the demo's generator, whose battery is written apart from this code", () => {
  const root = new URL("../../../../", import.meta.url);
  const textOf = (path: string): string => readFileSync(new URL(path, root), "utf8");
  const truths = readdirSync(new URL("tests/generator/truth/", root)).filter((name) => name.endsWith(".json"));

  /** Truth and figure of each rested visit of one demo test. */
  const compared = (name: string): { truth: number; low: number; high: number }[] => {
    const truth = JSON.parse(textOf(`tests/generator/truth/${name}`)) as { test: string; visits: { meanDensityAt25C: number }[] };
    const record = test.parse(parse(textOf(`data/tests/${truth.test}/test.yaml`)));
    const { value: readings } = parseReadings(textOf(`data/tests/${truth.test}/readings.csv`), "readings.csv", record.zone);
    const voltmeter = instrument.parse(parse(textOf(`data/instruments/${record.instruments.voltmeter}.yaml`)));
    const context = contextOf({
      battery: parse(textOf(`data/batteries/${record.battery}.yaml`)),
      instruments: { voltmeter },
      test: { zone: record.zone, connections: record.connections.map(({ on, off }) => ({ on, off })) },
      connections: record.connections.map(() => ({})),
      readings,
    });
    return context.readings.flatMap((reading, place) => {
      const { low, high } = toFigure(densityByRestVoltage, "reading", { context, reading }, 2);
      const mean = truth.visits[place]?.meanDensityAt25C;
      return low === null || high === null || mean === undefined ? [] : [{ truth: mean, low, high }];
    });
  };

  it("holds the mean density of all the acid at nineteen rested visits in twenty or more: a 95 % interval", () => {
    const all = truths.flatMap(compared);
    expect(all.length).toBeGreaterThan(30);
    const held = all.filter(({ truth, low, high }) => truth >= low && truth <= high);
    expect(held.length / all.length).toBeGreaterThanOrEqual(0.95);
  });
});
