import { describe, expect, it } from "vitest";
import { fitNonlinear, type Model } from "../../../lib/signal/fit-nonlinear.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { dataSetNames, readDataSet } from "../../reference/nist-nonlinear/data-sets.ts";

describe("non-linear least squares", () => {
  it.each(dataSetNames.flatMap((name) => [[name, 0] as const, [name, 1] as const]))(
    "reproduces NIST's certified %s from starting point %i (+1) to six digits",
    (name, place) => {
      const set = readDataSet(name);
      const fit = fitNonlinear(set.model, set.x, set.y, set.starts[place]);
      if (isRefused(fit)) throw new Error(fit.refused);
      for (const [j, certified] of set.certified.entries()) {
        expect(Math.abs((fit.parameters[j] ?? Number.NaN) / certified - 1), `b${j + 1}`).toBeLessThan(1e-6);
        expect(Math.abs((fit.standardErrors[j] ?? Number.NaN) / (set.certifiedErrors[j] ?? 0) - 1), `error of b${j + 1}`).toBeLessThan(
          1e-6,
        );
      }
      expect(Math.abs(fit.residualStandardDeviation / set.residualStandardDeviation - 1)).toBeLessThan(1e-6);
    },
  );

  it("reads every data set whole: as many points and parameters as NIST states", () => {
    const sizes = Object.fromEntries(dataSetNames.map((name) => [name, [readDataSet(name).x.length, readDataSet(name).certified.length]]));
    expect(sizes).toEqual({
      Misra1a: [14, 2],
      Misra1b: [14, 2],
      Misra1c: [14, 2],
      Misra1d: [14, 2],
      BoxBOD: [6, 2],
      Chwirut1: [214, 3],
      Chwirut2: [54, 3],
      DanWood: [6, 2],
      Eckerle4: [35, 3],
      Kirby2: [151, 5],
      Lanczos3: [24, 6],
      MGH17: [33, 5],
      Nelson: [128, 3],
    });
  });

  const line: Model = ([a = 0, b = 0], x) => a + b * x;

  it("starts from nought as well", () => {
    const fit = fitNonlinear(line, [0, 1, 2, 3], [1, 3.1, 4.9, 7], [0, 0]);
    if (isRefused(fit)) throw new Error(fit.refused);
    // The line of least squares by hand: slope 9.9/5 = 1.98, intercept 4 - 1.5·1.98 = 1.03.
    expect(fit.parameters[1]).toBeCloseTo(1.98, 6);
    expect(fit.parameters[0]).toBeCloseTo(1.03, 6);
  });

  it("refuses as many points as parameters", () => {
    expect(fitNonlinear(line, [0, 1], [1, 2], [0, 0])).toEqual({ refused: "2 points are too few for 2 parameters" });
  });

  it("counts only pairs that are numbers", () => {
    expect(fitNonlinear(line, [0, 1, 2], [1, 2, Number.NaN], [0, 0])).toEqual({ refused: "2 points are too few for 2 parameters" });
  });

  it("refuses a model that is not finite where it starts", () => {
    expect(fitNonlinear(([a = 0], x) => Math.log(a) * x, [1, 2, 3], [1, 2, 3], [-1])).toEqual({
      refused: "the model has no finite value at the starting point",
    });
  });

  it("refuses parameters that only act together", () => {
    const fit = fitNonlinear(([a = 0, b = 0], x) => (a + b) * x, [1, 2, 3, 4], [2, 4.1, 5.9, 8], [1, 1]);
    expect(fit).toHaveProperty("refused");
  });
});
