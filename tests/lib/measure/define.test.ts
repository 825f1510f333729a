import { describe, expect, it } from "vitest";
import { type FigureOutcome, notMeasured, standardUncertaintyOfFigure, toFigure } from "../../../lib/measure/define.ts";
import { figure } from "../../../lib/nouns/figure.ts";
import { sha256 } from "./bench.ts";

const evidence = [{ file: "data/tests/bench/readings.csv", sha256 }];
const publish = (outcome: FigureOutcome, unit: string | ((context: string) => string) = "A") =>
  toFigure(
    { id: "bench-figure", label: "Bench", unit, version: 3, explain: "", formula: null, source: "", checkedBy: [], compute: () => outcome },
    "test",
    "EUR",
    2,
  );

describe("the published form of a figure", () => {
  it("widens a standard uncertainty by the coverage factor", () => {
    expect(publish({ value: 5, standardUncertainty: 0.1, evidence })).toMatchObject({ low: 4.8, high: 5.2, method: "bench-figure/3" });
  });

  it("keeps an interval of its own as it is", () => {
    expect(publish({ value: 5, standardUncertainty: 9, interval: { low: 4, high: 11 }, evidence })).toMatchObject({ low: 4, high: 11 });
  });

  it("publishes an open end as absent, and keeps the other", () => {
    const open = publish({ value: 5, interval: { low: 4, high: Number.POSITIVE_INFINITY }, evidence });
    expect(open).toMatchObject({ low: 4, high: null });
    expect(figure.parse(open)).toEqual(open);
  });

  it("has no interval where none can be defended, which is not one of no width", () => {
    expect(publish({ value: 5, evidence })).toMatchObject({ value: 5, low: null, high: null, absent: null });
  });

  it("shows absence as absence with its reason, never as a number", () => {
    const absent = publish(notMeasured("not recorded", "the recorder logs no current", evidence));
    expect(absent).toMatchObject({
      value: null,
      low: null,
      high: null,
      absent: { kind: "not recorded", why: "the recorder logs no current" },
    });
    expect(figure.parse(absent)).toEqual(absent);
  });

  it("takes a unit from what it is a figure of, as a price's currency", () => {
    expect(publish({ value: 5, evidence }, (currency) => currency)).toHaveProperty("unit", "EUR");
  });

  it("gives back the standard uncertainty that an interval stands for, or none", () => {
    expect(standardUncertaintyOfFigure(publish({ value: 5, standardUncertainty: 0.1, evidence }), 2)).toBeCloseTo(0.1, 12);
    expect(standardUncertaintyOfFigure(publish({ value: 5, evidence }), 2)).toBeUndefined();
  });
});
