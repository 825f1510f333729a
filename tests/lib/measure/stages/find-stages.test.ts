import { beforeAll, describe, expect, it } from "vitest";
import { findStages } from "../../../../lib/measure/stages/find-stages.ts";
import { makeTrace } from "../../../../lib/measure/trace.ts";
import type { Stage, StageKind } from "../../../../lib/nouns/stage.ts";
import {
  absorption,
  bulk,
  type Columns,
  float,
  logOf,
  type Part,
  recordingOf,
  recordingOfSamples,
  rest,
  rows,
  samplesOf,
} from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

const stagesOf = (columns: Columns) => recordingOf(columns).stages;
const kindsOf = (parts: readonly Part[]): StageKind[] => stagesOf(logOf(parts)).map((stage) => stage.kind);

describe("stages of an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  /** The charge's stages; the limit is the longest stretch of held voltage, the float the last. */
  function measure(number: number) {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const { stages } = recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 });
    const [limit] = stages.filter((stage) => stage.kind === "constant-voltage").sort((a, b) => b.endS - b.startS - (a.endS - a.startS));
    const float = stages.findLast((stage) => stage.kind === "float");
    if (limit === undefined || float === undefined) throw new Error(`found ${stages.map((stage) => stage.kind).join(", ")}`);
    const off = {
      startH: limit.startS / 3600 - charge.expected("t_cc_h"),
      durationH: (limit.endS - limit.startS) / 3600 - charge.expected("t_cv_h"),
    };
    return { charge, stages, limit, float, off };
  }

  it.each([1, 2, 3])("charge %i: a held current, a held voltage, a float, in this order", (number) => {
    const { stages, limit, float } = measure(number);
    expect(stages[0]?.kind).toBe("constant-current");
    expect(stages.indexOf(limit)).toBeGreaterThan(0);
    expect(stages.indexOf(float)).toBeGreaterThan(stages.indexOf(limit));
  });

  it.each([1, 2, 3])("charge %i: the limit and the float within 0.02 V of what an independent script read", (number) => {
    const { charge, limit, float } = measure(number);
    expect(Math.abs((limit.voltageMeanV ?? Number.NaN) - charge.expected("V_cv"))).toBeLessThan(0.02);
    expect(Math.abs((float.voltageEndV ?? Number.NaN) - charge.expected("V_float"))).toBeLessThan(0.02);
  });

  it.each([1, 2, 3])("charge %i: hours until the limit within two per cent", (number) => {
    const { charge, off } = measure(number);
    expect(Math.abs(off.startH)).toBeLessThan(0.02 * charge.expected("t_cc_h"));
  });

  it.each([1, 2, 3])("charge %i: hours at the limit within two per cent", (number) => {
    const { charge, off } = measure(number);
    expect(Math.abs(off.durationH)).toBeLessThan(0.02 * charge.expected("t_cv_h"));
  });
});

describe("stages of small invented charges", () => {
  it("are found in an IUoU charge with a rest behind it, each edge within two rows of where the log was made", () => {
    const stages = stagesOf(logOf([bulk, absorption, float, rest]));
    expect(stages.map((stage) => stage.kind)).toEqual(["constant-current", "constant-voltage", "float", "rest"]);
    const edgesS = stages.slice(1).map((stage) => stage.startS);
    [5, 10, 14].forEach((hours, i) => {
      expect(Math.abs((edgesS[i] ?? Number.NaN) - hours * 3600)).toBeLessThanOrEqual(120);
    });
  });

  it("say who limited the current: the charger, then the battery, then nobody", () => {
    expect(stagesOf(logOf([bulk, absorption, rest])).map((stage) => stage.limitedBy)).toEqual(["charger", "battery", "nobody"]);
  });

  it("find an unregulated charger's falling current against rising voltage", () => {
    // Half the current between 2.05 and 2.40 V a cell, as a W characteristic has it.
    const drooping = { hours: 6, v: (h: number) => 12.3 + 0.35 * h, a: (h: number) => 8 * (1 - h / 10) };
    expect(kindsOf([drooping])).toEqual(["drooping"]);
  });

  it("find pulses between a held voltage and a rest", () => {
    const pulsing = { hours: 1, v: (h: number) => (isOn(h) ? 14.2 : 13.5), a: (h: number) => (isOn(h) ? 3 : 0) };
    const kinds = stagesOf(logOf([bulk, absorption, pulsing, rest], 10)).map((stage) => stage.kind);
    expect(kinds).toContain("pulses");
    expect(kinds.indexOf("pulses")).toBeGreaterThan(kinds.indexOf("constant-voltage"));
  });

  it("find a charge that was interrupted and went on", () => {
    const off = { hours: 0.5, v: (h: number) => 12.9 - 0.1 * h, a: () => 0 };
    const more = { hours: 3, v: (h: number) => 13.2 + 0.3 * h, a: () => 5 };
    expect(kindsOf([{ ...bulk, hours: 3 }, off, more, absorption])).toEqual([
      "constant-current",
      "interrupted",
      "constant-current",
      "constant-voltage",
    ]);
  });

  it("find one falling stretch of an unregulated charger in the stairs of a coarse recorder", () => {
    const marked = (value: number): number => Math.round(value / 0.05) * 0.05;
    const drooping = { hours: 6, v: (h: number) => marked(12.3 + 0.35 * h), a: (h: number) => marked(8 * (1 - h / 10)) };
    expect(kindsOf([drooping])).toEqual(["drooping"]);
  });

  it("place the bend from an unregulated charger to its limit within two rows", () => {
    const drooping = { hours: 6, v: (h: number) => 12.3 + 0.35 * h, a: (h: number) => 8 * (1 - h / 10) };
    const held = { hours: 3, v: () => 14.4, a: (h: number) => 0.3 + 2.9 * Math.exp(-h / 0.8) };
    const stages = stagesOf(logOf([drooping, held]));
    expect(stages.map((stage) => stage.kind)).toEqual(["drooping", "constant-voltage"]);
    expect(Math.abs((stages[1]?.startS ?? Number.NaN) - 6 * 3600)).toBeLessThanOrEqual(120);
  });

  it("find pulses of half a minute in a log with a row a minute, which sees one now and then", () => {
    const periodS = 37;
    const isPulse = (h: number): boolean => (h * 3600) % periodS < 12;
    const pulsing = { hours: 2, v: (h: number) => (isPulse(h) ? 14.4 : 13.6), a: (h: number) => (isPulse(h) ? 5 : 0) };
    expect(kindsOf([bulk, pulsing])).toEqual(["constant-current", "pulses"]);
  });

  it("keep a float one stage that follows the temperature over two days, though its current follows too", () => {
    const swing = (h: number): number => Math.sin((h / 24) * 2 * Math.PI);
    const warm = { hours: 48, v: (h: number) => 13.5 + 0.13 * swing(h), a: (h: number) => 0.12 + 0.05 * swing(h + 3) };
    expect(kindsOf([bulk, absorption, warm])).toEqual(["constant-current", "constant-voltage", "float"]);
  });

  it("keep a float one stage whose current is below what the recorder tells from none, while the day lets its voltage sink", () => {
    const warm = { hours: 30, v: (h: number) => 13.6 - 0.2 * Math.sin((h / 24) * Math.PI), a: () => 0.06 };
    expect(kindsOf([bulk, absorption, warm])).toEqual(["constant-current", "constant-voltage", "float"]);
  });

  it("take a float that is changed over to early, with C/26 flowing, for a float and not for a charge that goes on", () => {
    const early = { hours: 2, v: () => 14.4, a: (h: number) => 5 * Math.exp(-h / 2.6) };
    const drifting = { hours: 12, v: (h: number) => 13.4 + 0.01 * h, a: (h: number) => 0.6 - 0.01 * h };
    expect(kindsOf([bulk, early, drifting])).toEqual(["constant-current", "constant-voltage", "float"]);
  });

  it("let no piece bridge a gap in which the charge ended: the change lies at the gap", () => {
    const log = logOf([bulk, { ...absorption, hours: 3 }, { hours: 4, v: (h: number) => 12.9 - 0.02 * h, a: () => 0 }]);
    const isSeen = log.s.map((atS) => atS < 7.4 * 3600 || atS > 8.2 * 3600);
    const stages = stagesOf({
      s: log.s.filter((_, row) => isSeen[row]),
      v: log.v.filter((_, row) => isSeen[row]),
      a: log.a.filter((_, row) => isSeen[row]),
    });
    expect(stages.map((stage) => stage.kind)).toEqual(["constant-current", "constant-voltage", "rest"]);
    expect(stages[2]?.startS).toBeGreaterThanOrEqual(7.4 * 3600 - 60);
    expect(stages[2]?.startS).toBeLessThanOrEqual(8.2 * 3600 + 60);
  });

  it("take a battery's cells from its record: at 17 V a 24 V battery is flat, and its voltage would tell of six cells", () => {
    const flat = { hours: 5, v: (h: number) => 15 + 0.4 * h, a: () => 5 };
    const off = { hours: 1, v: () => 5, a: () => 0 };
    const trace = makeTrace(samplesOf(logOf([flat, off]), undefined), undefined);
    // Leads off the battery show less than 0.5 V a cell: 6 V of twelve cells, 3 V of six.
    const lastKind = (cells?: number): StageKind | undefined => findStages(trace, cells === undefined ? {} : { cells }).at(-1)?.kind;
    expect(lastKind(12)).toBe("no-battery");
    expect(lastKind()).toBe("rest");
  });

  it("find leads off the battery, and leads the wrong way round", () => {
    const off = { hours: 1, v: () => 0.02, a: () => 0 };
    const wrong = { hours: 1, v: () => -12.4, a: () => 0 };
    const stages = stagesOf(logOf([bulk, absorption, off, wrong]));
    expect(stages.map((stage) => stage.kind)).toEqual(["constant-current", "constant-voltage", "no-battery", "reversed"]);
    expect(stages[2]?.why).toMatch(/no current, and a voltage below 3.0 V/);
    expect(stages[3]?.why).toMatch(/the wrong way round \(danger: .*mains off before/);
  });

  it("name the two nearest kinds, and what each lacks, where a stretch fits none", () => {
    const lettingGo = { hours: 2, v: (h: number) => 14.4 - 0.6 * h, a: (h: number) => 5 - 1.5 * h };
    const odd = stagesOf(logOf([bulk, lettingGo, { ...bulk, hours: 1 }])).find((stage) => stage.kind === "unexplained");
    expect(odd?.why).toMatch(/^fits no kind; nearest are "[^"]+", but .*; and "[^"]+", but /);
  });

  it("find a discharge", () => {
    const load = { hours: 2, v: (h: number) => 12.5 - 0.2 * h, a: () => -3 };
    expect(kindsOf([load, bulk])).toEqual(["discharge", "constant-current"]);
  });
});

describe("stages, at the edges", () => {
  const nan = Number.NaN;
  it.each<[string, Columns]>([
    ["an empty log", { s: [], v: [], a: [] }],
    ["one sample", { s: [0], v: [13], a: [5] }],
    ["nothing but NaN", { s: rows(50, 60), v: Array(50).fill(nan), a: Array(50).fill(nan) }],
    ["no current column", { s: rows(50, 60), v: Array(50).fill(13) }],
    ["no voltage column", { s: rows(50, 60), a: Array(50).fill(5) }],
  ])("are none in %s", (_, columns) => {
    expect(stagesOf(columns)).toEqual([]);
  });

  it("are one, and doubtful, where nothing ever moves: what is held cannot be told", () => {
    const stages = stagesOf({ s: rows(200, 60), v: Array(200).fill(13.5), a: Array(200).fill(2) });
    expect(stages).toHaveLength(1);
    expect(stages[0]?.confidence).toBe("doubtful");
  });

  it.each([
    ["a battery that is there", 12.6, "rest"],
    ["none", 0, "no-battery"],
  ])("are one in a log of a charger that gives nothing, with %s", (_, voltageV, kind) => {
    const stages = stagesOf({ s: rows(2000, 1), v: Array(2000).fill(voltageV), a: Array(2000).fill(0) });
    expect(stages.map((stage) => stage.kind)).toEqual([kind]);
  });

  it("together cover the whole log, and their charges add up to the log's", () => {
    const log = logOf([bulk, absorption, float, rest]);
    const recording = recordingOf(log);
    const { stages } = recording;
    expect(stages[0]?.startS).toBe(0);
    expect(stages.at(-1)?.endS).toBe(log.s.at(-1));
    stages.slice(1).forEach((stage: Stage, i) => {
      expect(stage.startS).toBe(stages[i]?.endS);
    });
    const sum = stages.reduce((total, stage) => total + (stage.chargeAh ?? Number.NaN), 0);
    // 25 Ah, then 1.5 + 4.7 · 1.2 · (1 − e^(−5/1.2)) Ah, then 0.48 + 0.05 · (1 − e^−4) Ah: the ripple and rows a minute apart cost 0.02.
    expect(sum).toBeCloseTo(25 + 1.5 + 5.64 * (1 - Math.exp(-5 / 1.2)) + 0.48 + 0.05 * (1 - Math.exp(-4)), 1);
  });

  it("fit the taper of the held voltage: a time constant of 1.2 h, as the log was made, within one per cent", () => {
    const taper = stagesOf(logOf([bulk, absorption])).find((stage) => stage.kind === "constant-voltage")?.taper;
    if (taper === null || taper === undefined) throw new Error("no taper was fitted");
    // The ripple of 4 mA on 4.7 A, three hundred times, allows for less.
    expect(Math.abs(taper.tauH - 1.2)).toBeLessThan(0.012);
    expect(taper.tauLowH).toBeLessThanOrEqual(taper.tauH);
    expect(taper.tauHighH).toBeGreaterThanOrEqual(taper.tauH);
  });
});

/** On for twenty seconds of every minute. */
function isOn(hours: number): boolean {
  return (hours * 3600) % 60 < 19.5;
}
