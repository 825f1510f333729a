import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { recordingFigures } from "../../../lib/measure/figures/index.ts";
import type { Dialect } from "../../../lib/nouns/instrument.ts";
import { resolveRules } from "../../../lib/nouns/rules.ts";
import { site } from "../../../lib/nouns/site.ts";
import { readLog } from "../../../lib/read/log.ts";
import { absorption, bulk, float, logOf, recordingOfSamples } from "./bench.ts";

const log = logOf([bulk, absorption, float]);
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "units-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Writes the same charge as another recorder would, reads it back, and measures it. Values keep 9 decimals of their base unit. */
async function figuresOf(dialect: Dialect, scale: { time: number; voltage: number; current: number }): Promise<(number | null)[]> {
  const path = join(folder, "log.csv");
  const lines = log.s.map((s, i) =>
    [s * scale.time, (log.v[i] ?? 0) * scale.voltage, (log.a[i] ?? 0) * scale.current]
      .map((value) => Number(value.toPrecision(12)))
      .join(","),
  );
  writeFileSync(path, `t,v,i\n${lines.join("\n")}\n`);
  const named: Dialect = { ...dialect, time: { name: "t", kind: "elapsed", ...dialect.time } };
  const { value, problems } = await readLog({
    absolutePath: path,
    file: "log.csv",
    dialect: named,
    dialectPlace: undefined,
    zone: "UTC",
    startedAtMs: 0,
    badRows: [],
  });
  if (value === undefined) throw new Error(JSON.stringify(problems));
  const recording = recordingOfSamples(value.samples);
  return [
    ...recordingFigures(resolveRules(site.parse({ title: "Bench" }))).map((definition) => {
      const outcome = definition.compute(recording);
      return "value" in outcome ? outcome.value : null;
    }),
    ...recording.stages.flatMap((stage) => [stage.startS, stage.endS, stage.voltageMeanV, stage.currentMeanA]),
  ];
}

describe("one and the same charge", () => {
  const plain: Dialect = { voltage: { name: "v", unit: "V" }, current: { name: "i", unit: "A" }, chargingSign: "positive" };
  let expected: (number | null)[] = [];
  beforeAll(async () => {
    expected = await figuresOf(plain, { time: 1, voltage: 1, current: 1 });
    expect(expected.filter((value) => value !== null && value !== 0).length).toBeGreaterThan(10);
  });

  const variants: readonly [string, Dialect, { time: number; voltage: number; current: number }][] = [
    ["in milliamperes", { ...plain, current: { name: "i", unit: "mA" } }, { time: 1, voltage: 1, current: 1000 }],
    ["in millivolts", { ...plain, voltage: { name: "v", unit: "mV" } }, { time: 1, voltage: 1000, current: 1 }],
    ["in minutes", { ...plain, time: { unit: "min" } }, { time: 1 / 60, voltage: 1, current: 1 }],
    ["with charging counted as negative", { ...plain, chargingSign: "negative" }, { time: 1, voltage: 1, current: -1 }],
    [
      "in milliamperes, negative, and millivolts",
      { ...plain, voltage: { name: "v", unit: "mV" }, current: { name: "i", unit: "mA" }, chargingSign: "negative" },
      { time: 1, voltage: 1000, current: -1000 },
    ],
  ];
  it.each(variants)("written %s gives the same figures and stages", async (_, dialect, scale) => {
    const found = await figuresOf(dialect, scale);
    expect(found).toHaveLength(expected.length);
    found.forEach((value, i) => {
      const wanted = expected[i];
      if (wanted === null || wanted === undefined) expect(value).toBe(wanted);
      // Twelve digits were written; sums over a thousand rows keep nine.
      else expect(Math.abs((value ?? Number.NaN) - wanted)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(wanted)));
    });
  });
});
