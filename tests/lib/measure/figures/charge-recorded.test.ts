import { beforeAll, describe, expect, it } from "vitest";
import { chargeRecorded } from "../../../../lib/measure/figures/charge-recorded.ts";
import { field, numberField, readReferenceTable } from "../../../reference/read-table.ts";
import { benchStartMs, contextOf, plainRecorder, recordingOf, recordingOfSamples, rows, unstatedRecorder } from "../bench.ts";
import { type FieldCharge, fieldRecorder, readFieldCharges } from "../field-log.ts";

const examples = new Map(readReferenceTable("worked-examples/worked-examples.csv").map((row) => [field(row, "id"), row]));
function example(id: string): { expectedAh: number; toleranceAh: number } {
  const row = examples.get(id);
  if (row === undefined) throw new Error(`no worked example ${id}`);
  return { expectedAh: numberField(row, "expected"), toleranceAh: numberField(row, "tolerance") };
}

/** Current that decays from 5 A with a time constant of 20 min: what W062 to W066 integrate. */
const decayA = (s: number): number => 5 * Math.exp(-s / 1200);
const chargeOfRows = (s: readonly number[], currentA: (s: number) => number) =>
  chargeRecorded.recording.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(currentA) }));

describe("charge recorded", () => {
  it("is 10 Ah for a steady 5 A over 2 h (definition of the ampere-hour)", () => {
    expect(chargeOfRows(rows(121, 60), () => 5)).toMatchObject({ value: expect.closeTo(10, 9) });
  });

  it.each([
    ["W062", rows(61, 60)],
    ["W064", rows(7, 600)],
  ])("agrees with %s of the worked examples, a decay added up by trapezoids", (id, s) => {
    const { expectedAh, toleranceAh } = example(id);
    const outcome = chargeOfRows(s, decayA);
    expect(outcome).toHaveProperty("value");
    expect(Math.abs(("value" in outcome ? outcome.value : Number.NaN) - expectedAh)).toBeLessThanOrEqual(toleranceAh);
  });

  it("comes to W063, the exact integral, as rows come closer: within 1e-6 Ah at one a second", () => {
    const outcome = chargeOfRows(rows(3601, 1), decayA);
    // The trapezoid's excess is h²/(12 τ²) of the whole: 1.6 Ah · 5.8e-8.
    expect(outcome).toMatchObject({ value: expect.closeTo(example("W063").expectedAh, 5) });
  });

  it("is exact on a straight line, whatever the spacing (W069), where no pause is a gap", () => {
    const recorder = { ...plainRecorder, longestIntervalS: 4000 };
    const s = [0, 7, 100, 3600];
    const outcome = chargeRecorded.recording.compute(recordingOf({ s, v: s.map(() => 13), a: s.map((t) => 2 + 0.001 * t) }, { recorder }));
    expect(outcome).toMatchObject({ value: expect.closeTo(example("W069").expectedAh, 9) });
  });

  it("agrees with W065 where the recorder's record allows its long pauses", () => {
    const recorder = { ...plainRecorder, longestIntervalS: 2000 };
    const s = [0, 100, 500, 600, 1800, 3600];
    const outcome = chargeRecorded.recording.compute(recordingOf({ s, v: s.map(() => 13), a: s.map(decayA) }, { recorder }));
    expect(outcome).toMatchObject({ value: expect.closeTo(example("W065").expectedAh, 5) });
  });

  it("adds nothing for a gap, where joining it by a line would add 3.3 % (W066), and says how long it was", () => {
    const s = rows(61, 60).filter((t) => t < 660 || t > 1740);
    const outcome = chargeOfRows(s, decayA);
    const joined = example("W066").expectedAh;
    const overGapAh = ((decayA(600) + decayA(1800)) / 2) * (1200 / 3600);
    expect(outcome).toMatchObject({
      value: expect.closeTo(joined - overGapAh, 5),
      doubts: ["log.csv has a gap of 20 min in all, which add nothing"],
    });
  });

  it("carries the meter's fixed error over the whole time: ±0.1 A over 2 h is 0.2/√3 Ah (JCGM 100, 5.2.2, by hand)", () => {
    expect(chargeOfRows(rows(121, 60), () => 5)).toMatchObject({ standardUncertainty: expect.closeTo(0.2 / Math.sqrt(3), 9) });
  });

  it("has no interval, and says why, where the recorder's accuracy is not stated", () => {
    const s = rows(11, 60);
    const outcome = chargeRecorded.recording.compute(
      recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }, { recorder: unstatedRecorder }),
    );
    expect(outcome).toMatchObject({
      standardUncertainty: undefined,
      doubts: ["Unstated recorder (invented): no accuracy is stated for current, so no interval is given"],
    });
  });

  it("is absent, with the reason, where there is no current column, no recording, or no row with values", () => {
    const s = rows(11, 60);
    expect(chargeRecorded.recording.compute(recordingOf({ s, v: s.map(() => 13) }))).toMatchObject({
      absent: "not recorded",
      why: "the recorder logs no current",
    });
    expect(chargeRecorded.test.compute(contextOf())).toMatchObject({ absent: "not recorded", why: "there is no recording" });
    const empty = recordingOf({ s, v: s.map(() => Number.NaN), a: s.map(() => Number.NaN) });
    expect(chargeRecorded.recording.compute(empty)).toMatchObject({
      absent: "cannot tell",
      why: "fewer than two rows have values, so nothing can be added up",
    });
  });

  it("counts an hour that two recorders saw once, and says so", () => {
    const s = rows(61, 60);
    const steady = { s, v: s.map(() => 13), a: s.map(() => 5) };
    const first = recordingOf(steady, { id: "one.csv" });
    const halfAnHourLater = recordingOf(steady, { id: "two.csv", startMs: benchStartMs + 1_800_000 });
    const outcome = chargeRecorded.test.compute(contextOf({ connections: [{ onH: 0, offH: 2, recordings: [halfAnHourLater, first] }] }));
    expect(outcome).toMatchObject({
      value: expect.closeTo(7.5, 9),
      doubts: ["one.csv and two.csv ran side by side for 30 min, which are counted once"],
    });
  });

  it("names a recording that logs no current and so adds nothing to the sum", () => {
    const s = rows(61, 60);
    const full = recordingOf({ s, v: s.map(() => 13), a: s.map(() => 5) }, { id: "one.csv" });
    const voltageOnly = recordingOf({ s, v: s.map(() => 13) }, { id: "two.csv", startMs: benchStartMs + 7_200_000 });
    const outcome = chargeRecorded.test.compute(contextOf({ connections: [{ onH: 0, offH: 4, recordings: [full, voltageOnly] }] }));
    expect(outcome).toMatchObject({ value: expect.closeTo(5, 9), doubts: ["two.csv adds nothing: it logs no current"] });
  });
});

describe("charge recorded, against an open field log of a 17 Ah battery (tests/reference/leadacid-17ah)", () => {
  let charges: readonly FieldCharge[] = [];
  beforeAll(async () => {
    charges = await readFieldCharges();
  });

  it.each([1, 2, 3])("charge %i agrees within one part in a thousand with what an independent script added up", (number) => {
    const charge = charges[number - 1];
    if (charge === undefined) throw new Error("the field log holds three charges");
    const outcome = chargeRecorded.recording.compute(recordingOfSamples(charge.samples, { recorder: fieldRecorder, capacityAh: 17 }));
    const valueAh = "value" in outcome ? outcome.value : Number.NaN;
    expect(Math.abs(valueAh / charge.expected("Ah_trapz") - 1)).toBeLessThan(0.001);
  });
});
