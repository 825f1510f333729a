import { describe, expect, it } from "vitest";
import { examinationOf, witnessesOf } from "../../../lib/measure/witnesses.ts";
import { absorption, type BenchOptions, benchInstruments, bulk, contextOf, logOf, recordingOf, rest, visit } from "./bench.ts";

/** A charge of 10 h with a visit before it and one 10 h after it; the recorder's log is the bulk and the absorption. */
const bench = (more: BenchOptions = {}): BenchOptions => ({
  connections: [
    { onH: 1, offH: 12, recordings: [recordingOf(logOf([bulk, absorption]), { startMs: Date.parse("2026-03-02T09:00:00Z") })] },
  ],
  readings: [
    visit(1, 0, { density_1: 1.14, density_2: 1.15, rest_V: 12.0, rest_h: 24, acid_C: 20 }),
    visit(2, 22, { density_1: 1.25, density_2: 1.26, rest_V: 12.7, acid_C: 20, cranking_A: 400 }),
  ],
  ...more,
});
const witnesses = (more?: BenchOptions) => witnessesOf(contextOf(bench(more)));

describe("what a test heard from its battery's witnesses", () => {
  it("splits the hydrometer's error into rounding, which visits do not share, and scale, which they do", () => {
    const [first] = witnesses().visits;
    // A step of 0.005 is 0.005/√12; ±0.005 in all is 0.005/√3, so the common part is √(0.005²/3 − 0.005²/12) = 0.0025, by hand.
    expect(first?.densityAt25C).toMatchObject({
      randomStandardUncertainty: expect.closeTo(0.005 / Math.sqrt(12) / Math.SQRT2, 9),
      commonStandardUncertainty: expect.closeTo(0.0025, 9),
      temperatureMeasured: true,
    });
    expect(first?.densityAt25C?.cells).toHaveLength(2);
  });

  it("takes the hours of rest that the records imply where the visit did not note them: clamps off at 12 h, read at 22 h", () => {
    expect(witnesses().visits.map(({ restV }) => restV?.restH)).toEqual([24, 10]);
  });

  it("gives no hours of rest while nobody saw the clamps come off", () => {
    const open = witnesses({ connections: [{ onH: 1, offH: null, recordings: [] }] });
    expect(open.visits[1]?.restV).not.toHaveProperty("restH");
  });

  it("counts what was recorded between visits, and bounds what was not: an hour at the last current", () => {
    const [between] = witnesses().intervals;
    // 5 A for 5 h and 0.3·5 + 4.7·1.2·(1 − e^(−5/1.2)) Ah of absorption, by hand; the log ends a minute short of 10 h.
    expect(between?.recordedAh?.value).toBeCloseTo(25 + 1.5 + 4.7 * 1.2 * (1 - Math.exp(-5 / 1.2)), 1);
    expect(between?.unseenH?.low).toBeCloseTo(1 + 1 / 60, 6);
    expect(between?.unseenH?.high).toBeCloseTo(1 + 1 / 60, 6);
    expect(between?.unseenBoundAh?.low).toBe(0);
    expect(between?.unseenBoundAh?.high).toBeCloseTo(0.37, 1);
    expect(between?.hours).toBe(22);
  });

  it("leaves the unseen hours out where nobody noted when a connection began", () => {
    const [between] = witnesses({ connections: [{ onH: null, offH: null, recordings: [] }] }).intervals;
    expect(between).not.toHaveProperty("unseenH");
    expect(between).not.toHaveProperty("recordedAh");
  });

  it("lets a connection without a recording have brought what its label promises, and a tenth more", () => {
    const [between] = witnesses({
      claims: { currentA: { value: 4, from: "label" } },
      connections: [{ onH: 1, offH: 11, recordings: [] }],
    }).intervals;
    expect(between?.unseenBoundAh?.high).toBeCloseTo(4.4 * 10, 9);
  });

  it("takes hours in which the recorder's leads were off the battery for unseen, not for hours without current", () => {
    const off = recordingOf(logOf([bulk, { hours: 5, v: () => 0, a: () => 0 }]), { startMs: Date.parse("2026-03-02T09:00:00Z") });
    const [between] = witnesses({ connections: [{ onH: 1, offH: 11, recordings: [off] }] }).intervals;
    // 10 h connected, of which the recorder was on the battery for the first five, to a row.
    expect(between?.unseenH?.low).toBeCloseTo(5, 1);
    expect(between?.unseenBoundAh?.high).toBeGreaterThanOrEqual(5 * 4.9);
  });

  it("takes a log that shows nothing but leads off the battery for no record of charge, not for one of no charge", () => {
    const off = recordingOf(logOf([{ hours: 5, v: () => 0, a: () => 0 }]), { startMs: Date.parse("2026-03-02T09:00:00Z") });
    const [between] = witnesses({ connections: [{ onH: 1, offH: 6, recordings: [off] }] }).intervals;
    expect(between).not.toHaveProperty("recordedAh");
    expect(between?.unseenH?.low).toBeCloseTo(5, 1);
  });

  it("lets a charger that was seen to end have brought next to nothing afterwards: C/200 an hour", () => {
    const ended = recordingOf(logOf([bulk, absorption, rest]), { startMs: Date.parse("2026-03-02T09:00:00Z") });
    const [between] = witnesses({ connections: [{ onH: 1, offH: 19, recordings: [ended] }] }).intervals;
    expect(between?.unseenBoundAh?.high).toBeCloseTo((60 / 200) * (18 - 12 + 1 / 60), 6);
  });

  it("holds cranking current against a rating of the same standard only", () => {
    const rated = (standard: string) => witnesses({ battery: { crankingRating: { currentA: 500, standard } } }).battery;
    expect(rated("EN 50342-1")).toMatchObject({ crankingRatingA: 500 });
    expect(rated("SAE J537")).not.toHaveProperty("crankingRatingA");
  });

  it("takes a width, not nothing, where an instrument's accuracy is not stated", () => {
    const { voltmeter: _left, ...others } = benchInstruments;
    const unstated = { ...others, hydrometer: { ...others.hydrometer, measures: {} } };
    const [first] = witnesses({ instruments: unstated }).visits;
    expect(Math.hypot(first?.densityAt25C?.commonStandardUncertainty ?? 0, 0.001)).toBeCloseTo(0.005 / Math.sqrt(3), 9);
    expect(first?.restV?.commonStandardUncertainty).toBeGreaterThan(0.02);
  });
});

describe("the examination of a test", () => {
  it("is made once, and is the same however often it is asked for", () => {
    const context = contextOf(bench());
    expect(examinationOf(context)).toBe(examinationOf(context));
    expect(examinationOf(contextOf(bench()))).toEqual(examinationOf(context));
  });

  it("says why where there is nothing to examine", () => {
    expect(examinationOf(contextOf())).toMatchObject({ examined: false, why: expect.any(String) });
  });
});
