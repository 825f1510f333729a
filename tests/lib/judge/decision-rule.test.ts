import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { acceptanceLimitForRisk, type DecisionInput, decide, falseAcceptBound, globalRisk } from "../../../lib/judge/decision-rule.ts";

const seed = 20260311;
/** A claim of 8 A with 10 % either way, measured with u = 0.05 A, so U = 0.1 A. */
const claim: DecisionInput = { value: 8, standardUncertainty: 0.05, acceptLow: 7.2, acceptHigh: 8.8, rule: "guarded", coverageFactor: 2 };

describe("decision rule, guarded", () => {
  it.each([
    [8, "meets"],
    [7.31, "meets"],
    [7.29, "cannot tell"],
    [7.2, "cannot tell"],
    [7.11, "cannot tell"],
    [7.09, "short of"],
    [8.69, "meets"],
    [8.75, "cannot tell"],
    [8.91, "above"],
  ] as const)("%f A: %s", (value, outcome) => {
    expect(decide({ ...claim, value }).outcome).toBe(outcome);
  });

  it("cannot tell anything with an instrument wider than the tolerance", () => {
    expect(decide({ ...claim, standardUncertainty: 0.5 }).outcome).toBe("cannot tell");
  });

  it("says in words which rule and which limit decided", () => {
    expect(decide({ ...claim, value: 7 }).words).toBe("below the lower limit by more than the expanded uncertainty (k = 2)");
    expect(decide(claim).words).toBe("inside the tolerance by at least the expanded uncertainty (k = 2)");
  });

  it("never gets from meets to short of, or back, by a better instrument alone", () => {
    const amps = fc.double({ min: 5, max: 11, noNaN: true });
    const u = fc.double({ min: 0.001, max: 1, noNaN: true });
    fc.assert(
      fc.property(amps, u, fc.double({ min: 0, max: 1, noNaN: true }), (value, standardUncertainty, share) => {
        const coarse = decide({ ...claim, value, standardUncertainty }).outcome;
        const fine = decide({ ...claim, value, standardUncertainty: share * standardUncertainty }).outcome;
        if (coarse !== "cannot tell") expect(fine).toBe(coarse);
      }),
      { seed },
    );
  });

  it("is wrong in at most 2.3 % of its verdicts at a limit, as its probability says", () => {
    fc.assert(
      fc.property(fc.double({ min: 5, max: 11, noNaN: true }), (value) => {
        const { outcome, probabilityWithin } = decide({ ...claim, value });
        if (outcome === "meets") expect(probabilityWithin).toBeGreaterThanOrEqual(1 - 2 * falseAcceptBound(1, 2));
        if (outcome === "short of" || outcome === "above") expect(probabilityWithin).toBeLessThanOrEqual(falseAcceptBound(1, 2));
      }),
      { seed },
    );
  });
});

describe("decision rule, simple", () => {
  const simple: DecisionInput = { ...claim, rule: "simple" };

  it("lets the value decide, and a value on the limit meets it", () => {
    expect(decide({ ...simple, value: 7.2 }).outcome).toBe("meets");
    expect(decide({ ...simple, value: 7.199 }).outcome).toBe("short of");
    expect(decide({ ...simple, value: 8.801 }).outcome).toBe("above");
  });

  it("is even money on the limit itself", () => {
    // The other limit is 32 u away.
    expect(decide({ ...simple, value: 7.2 }).probabilityWithin).toBeCloseTo(0.5, 12);
  });
});

describe("decision rule at its edges", () => {
  it("knows one-sided claims", () => {
    expect(decide({ ...claim, value: 20, acceptHigh: null }).outcome).toBe("meets");
    expect(decide({ ...claim, value: 0, acceptLow: null }).outcome).toBe("meets");
    expect(decide({ ...claim, value: 0, acceptHigh: null }).outcome).toBe("short of");
  });

  it("commutes with the unit", () => {
    const inMA = { ...claim, value: 7250, standardUncertainty: 50, acceptLow: 7200, acceptHigh: 8800 };
    const inA = decide({ ...claim, value: 7.25 });
    expect(decide(inMA).outcome).toBe(inA.outcome);
    expect(decide(inMA).probabilityWithin).toBeCloseTo(inA.probabilityWithin, 10);
  });

  it("is certain where there is no uncertainty", () => {
    expect(decide({ ...claim, standardUncertainty: 0 })).toMatchObject({ outcome: "meets", probabilityWithin: 1 });
    expect(decide({ ...claim, value: 7, standardUncertainty: 0 })).toMatchObject({ outcome: "short of", probabilityWithin: 0 });
  });

  it.each([
    ["no limit", { acceptLow: null, acceptHigh: null }, /no limit/],
    ["crossed limits", { acceptLow: 9, acceptHigh: 8 }, /crossed/],
    ["a limit that is NaN", { acceptLow: Number.NaN }, /limit is not a number/],
    ["no value", { value: Number.NaN }, /no value/],
    ["no uncertainty", { standardUncertainty: Number.NaN }, /uncertainty/],
    ["a negative uncertainty", { standardUncertainty: -1 }, /uncertainty/],
    ["no coverage factor", { coverageFactor: 0 }, /coverage factor/],
  ] as const)("cannot tell, and says why: %s", (_, change, reason) => {
    const decision = decide({ ...claim, ...change });
    expect(decision.outcome).toBe("cannot tell");
    expect(decision.probabilityWithin).toBeNaN();
    expect(decision.words).toMatch(reason);
  });
});

describe("global risk", () => {
  /** Run-out of ball bearings, JCGM 106:2012, 9.5.4: gamma prior of shape 4, scale 1/4. */
  const bearings = {
    priorDensity: (x: number): number => (256 / 6) * x ** 3 * Math.exp(-4 * x),
    priorUpTo: 12,
    upperLimit: 2,
    standardUncertainty: 0.25,
  };

  it("has the prior's own share beyond the limit, which has a closed form", () => {
    // Gamma of whole shape: exp(-8)·(1 + 8 + 32 + 256/3).
    const closed = Math.exp(-8) * (1 + 8 + 32 + 256 / 3);
    expect(globalRisk({ ...bearings, acceptUpTo: 2 }).nonconforming).toBeCloseTo(closed, 8);
  });

  it("trades the consumer's risk for the producer's as the acceptance limit falls", () => {
    const lenient = globalRisk({ ...bearings, acceptUpTo: 2.2 });
    const strict = globalRisk({ ...bearings, acceptUpTo: 1.8 });
    expect(strict.consumers).toBeLessThan(lenient.consumers);
    expect(strict.producers).toBeGreaterThan(lenient.producers);
  });

  it("has the risk asked for at the limit found, and no limit for an impossible risk", () => {
    const acceptUpTo = acceptanceLimitForRisk(bearings, 0.001);
    expect(globalRisk({ ...bearings, acceptUpTo }).consumers).toBeCloseTo(0.001, 9);
    expect(acceptanceLimitForRisk(bearings, 0.5)).toBeNaN();
  });
});
