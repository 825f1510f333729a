import { describe, expect, it } from "vitest";
import { densityAtVisit, densitySpread, figuresOfVisit, valueAsRead } from "../../../../lib/measure/figures/reading-values.ts";
import { benchInstruments, contextOf, valueIn, visit } from "../bench.ts";

function firstVisit(values: Parameters<typeof visit>[2], options: Parameters<typeof contextOf>[0] = {}) {
  const context = contextOf({ ...options, readings: [visit(1, 0, values)] });
  const reading = context.readings[0];
  if (reading === undefined) throw new Error("the visit is missing");
  return { context, reading };
}

describe("values of a visit", () => {
  it.each([
    ["W040", 1.25, 35, 1.2571],
    ["W041", 1.25, 5, 1.2357],
    ["W042", 1.265, 0, 1.2468],
    ["W043", 1.15, 35, 1.1562],
  ])("bring the density to 25 °C as %s has it, within 0.0005", (_, read, acidC, expected) => {
    expect(Math.abs(valueIn(densityAtVisit.compute(firstVisit({ density_1: read, acid_C: acidC }))) - expected)).toBeLessThan(0.0005);
  });

  it("spread is highest less lowest cell, with the rounding of two readings for its uncertainty: 0.005/√6", () => {
    expect(densitySpread.compute(firstVisit({ density_1: 1.25, density_2: 1.28, density_3: 1.26, acid_C: 25 }))).toMatchObject({
      value: expect.closeTo(0.03, 9),
      standardUncertainty: expect.closeTo(0.005 / Math.sqrt(6), 9),
    });
  });

  it("spread says why it has no interval where the hydrometer's step is not stated", () => {
    const hydrometer = { ...benchInstruments.hydrometer, measures: { density: { plusMinus: 0.005, from: "data sheet" as const } } };
    expect(
      densitySpread.compute(firstVisit({ density_1: 1.25, density_2: 1.28, acid_C: 25 }, { instruments: { hydrometer } })),
    ).toMatchObject({
      standardUncertainty: undefined,
      doubts: ["the hydrometer's step is not stated, so no interval is given"],
    });
  });

  it("spread needs two cells", () => {
    expect(densitySpread.compute(firstVisit({ density_1: 1.25, acid_C: 25 }))).toMatchObject({ absent: "not measured" });
  });

  it("are published as they were read, with the instrument's accuracy and the cell of the file", () => {
    expect(valueAsRead("rest_V").compute(firstVisit({ rest_V: 12.65 }))).toMatchObject({
      value: 12.65,
      standardUncertainty: expect.closeTo(0.02 / Math.sqrt(3), 9),
      evidence: [{ file: "data/tests/bench/readings.csv", lines: [2, 2], column: 20 }],
    });
  });

  it("leave out what was not read; a density not read is absent with the reason", () => {
    const { context, reading } = firstVisit({ rest_V: 12.65 });
    const figures = figuresOfVisit(context, reading);
    expect(figures.map((figure) => figure.id)).toEqual(["density-at-25c", "density-by-rest-voltage", "rest-v"]);
    expect(figures[0]).toMatchObject({ value: null, absent: { kind: "not measured", why: "density was not read at this visit" } });
  });

  it("doubt a density whose acid temperature nobody read, and one of a scale that nobody stated", () => {
    const hydrometer = { ...benchInstruments.hydrometer, density: { convention: "not stated" as const, correctsTemperature: false } };
    const outcome = densityAtVisit.compute(firstVisit({ density_1: 1.25 }, { instruments: { hydrometer } }));
    expect(outcome).toHaveProperty("doubts", [
      expect.stringContaining("temperature was not read"),
      expect.stringContaining("scale means is not stated"),
    ]);
  });
});
