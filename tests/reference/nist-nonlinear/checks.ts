/** Every certified number of every data set, from both starting points, beside our fit. */
import { fitNonlinear } from "../../../lib/signal/fit-nonlinear.ts";
import { isRefused } from "../../../lib/signal/fit-result.ts";
import { type Check, compare } from "../check.ts";
import { dataSetNames, readDataSet } from "./data-sets.ts";

/** Six digits, which is what a fit must hold that is published to three. */
const relativeTolerance = 1e-6;

export function checkNistFits(): Check[] {
  return dataSetNames.flatMap((name) => {
    const set = readDataSet(name);
    return set.starts.flatMap((start, place) => {
      const fit = fitNonlinear(set.model, set.x, set.y, start);
      const check = (what: string, expected: number, ours: number): Check =>
        compare(
          {
            id: `${name}/${place + 1}/${what}`,
            group: `NIST ${name}, start ${place + 1}`,
            quantity: what,
            expected,
            tolerance: relativeTolerance * Math.abs(expected),
            unit: "",
            reason: "six digits",
          },
          ours,
        );
      const at = (values: readonly number[] | undefined, j: number): number => values?.[j] ?? Number.NaN;
      const fitted = isRefused(fit) ? undefined : fit;
      return [
        ...set.certified.map((value, j) => check(`b${j + 1}`, value, at(fitted?.parameters, j))),
        ...set.certifiedErrors.map((value, j) => check(`standard error of b${j + 1}`, value, at(fitted?.standardErrors, j))),
        check("residual standard deviation", set.residualStandardDeviation, fitted?.residualStandardDeviation ?? Number.NaN),
      ];
    });
  });
}
