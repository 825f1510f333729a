import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Accuracy } from "../../../lib/nouns/instrument.ts";
import {
  combine,
  covarianceOfMeans,
  coverageFactor95,
  effectiveDegreesOfFreedom,
  expand,
  meanOfRepeats,
  propagate,
  standardUncertaintyOf,
} from "../../../lib/units/uncertainty.ts";

const seed = 20260311;
const from = "data sheet" as const;

describe("standard uncertainty of a reading", () => {
  it("adds the parts up and takes them as rectangular", () => {
    const accuracy: Accuracy = { percentOfReading: 0.5, digits: 2, resolution: 0.01, plusMinus: 0.1, from };
    expect(standardUncertaintyOf(accuracy, 14.4)).toBeCloseTo((0.072 + 0.02 + 0.1) / Math.sqrt(3), 12);
  });

  it("is the resolution over √12 where nothing else is known", () => {
    expect(standardUncertaintyOf({ resolution: 0.005, from }, 1.25)).toBeCloseTo(0.005 / Math.sqrt(12), 12);
  });

  it("minds the size of a reading, not its sign", () => {
    const accuracy: Accuracy = { percentOfReading: 1, from };
    expect(standardUncertaintyOf(accuracy, -8)).toBe(standardUncertaintyOf(accuracy, 8));
  });

  it("is NaN for no reading", () => {
    expect(standardUncertaintyOf({ plusMinus: 0.1, from }, Number.NaN)).toBeNaN();
  });

  it("never narrows for a less accurate instrument", () => {
    const part = fc.double({ min: 0, max: 5, noNaN: true });
    const step = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        part,
        part,
        part,
        step,
        part,
        part,
        part,
        step,
        fc.double({ min: -500, max: 500, noNaN: true }),
        (p, d, f, r, dp, dd, df, dr, x) => {
          const better: Accuracy = { percentOfReading: p, digits: d, plusMinus: f, resolution: r, from };
          const worse: Accuracy = { percentOfReading: p + dp, digits: d + dd, plusMinus: f + df, resolution: r + dr, from };
          expect(standardUncertaintyOf(worse, x)).toBeGreaterThanOrEqual(standardUncertaintyOf(better, x));
        },
      ),
      { seed },
    );
  });

  it("does not narrow when a tiny percentage is added to a bare resolution", () => {
    const bare = standardUncertaintyOf({ resolution: 0.01, from }, 12);
    expect(standardUncertaintyOf({ resolution: 0.01, percentOfReading: 0.001, from }, 12)).toBeGreaterThanOrEqual(bare);
  });

  it("commutes with the unit: volts or millivolts, the same reading is as uncertain", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.01, max: 50, noNaN: true }), (volts) => {
        const inV = standardUncertaintyOf({ percentOfReading: 0.5, digits: 2, resolution: 0.01, from }, volts);
        const inMV = standardUncertaintyOf({ percentOfReading: 0.5, digits: 2, resolution: 10, from }, 1000 * volts);
        // Rounding only.
        expect(inMV / inV / 1000).toBeCloseTo(1, 12);
      }),
      { seed },
    );
  });
});

describe("combining uncertainties", () => {
  it("adds squares, and nothing to nothing", () => {
    expect(combine(3, 4)).toBe(5);
    expect(combine()).toBe(0);
    expect(combine(1, Number.NaN)).toBeNaN();
  });

  it("is never smaller than its largest part", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 6 }), (parts) => {
        // One part in 1e15 is rounding.
        expect(combine(...parts)).toBeGreaterThanOrEqual(Math.max(...parts) * (1 - 1e-15));
      }),
      { seed },
    );
  });

  it("expands by k", () => {
    expect(expand(0.05, 2)).toBe(0.1);
  });

  it("has the degrees of freedom of its only part, and infinitely many from data sheets", () => {
    expect(effectiveDegreesOfFreedom([{ standardUncertainty: 0.3, degreesOfFreedom: 7 }])).toBeCloseTo(7, 12);
    expect(effectiveDegreesOfFreedom([{ standardUncertainty: 0.3, degreesOfFreedom: Number.POSITIVE_INFINITY }])).toBe(
      Number.POSITIVE_INFINITY,
    );
    expect(effectiveDegreesOfFreedom([])).toBe(Number.POSITIVE_INFINITY);
    expect(coverageFactor95(Number.POSITIVE_INFINITY)).toBeCloseTo(1.96, 3);
  });
});

describe("repeats and correlation", () => {
  it("takes the scatter of repeats over root n", () => {
    const { mean, standardUncertainty, degreesOfFreedom } = meanOfRepeats([1, 2, 3, 4, 5]);
    expect(mean).toBe(3);
    expect(standardUncertainty).toBeCloseTo(Math.sqrt(2.5 / 5), 12);
    expect(degreesOfFreedom).toBe(4);
  });

  it("claims no certainty from a single value", () => {
    expect(meanOfRepeats([1.25]).standardUncertainty).toBeNaN();
  });

  it("cancels what two readings share in their difference, and doubles it in their sum", () => {
    const shared = [1.01, 1.02, 0.99, 1.03];
    const covariance = covarianceOfMeans([shared, shared]);
    expect(propagate([1, -1], covariance)).toBeCloseTo(0, 12);
    expect(propagate([1, 1], covariance)).toBeCloseTo(2 * meanOfRepeats(shared).standardUncertainty, 12);
  });

  it("adds squares where nothing is shared", () => {
    expect(
      propagate(
        [1, 1],
        [
          [9, 0],
          [0, 16],
        ],
      ),
    ).toBeCloseTo(5, 12);
  });
});
