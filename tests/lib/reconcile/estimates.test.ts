import { describe, expect, it } from "vitest";
import { prepareCase } from "../../../lib/reconcile/case.ts";
import { estimate, fromNought, probabilityBelow, withinShare } from "../../../lib/reconcile/estimates.ts";
import type { Posterior } from "../../../lib/reconcile/posterior.ts";
import { blankStory } from "../../../lib/reconcile/story.ts";
import { witnessesOf } from "./example.ts";

/** A posterior of two combinations whose stories hold these capacities. */
function posteriorOf(first: readonly number[], second: readonly number[]): Posterior {
  const the = prepareCase(witnessesOf({ densities: [1.2], restV: [12.3], recordedAh: [] }));
  if ("why" in the) throw new Error(the.why);
  const stories = (values: readonly number[]) => values.map((capacityAh) => ({ ...blankStory(the), capacityAh }));
  return {
    combinations: [
      { causes: [], probability: 0.5, draws: stories(first) },
      { causes: ["weak-cell"], probability: 0.5, draws: stories(second) },
    ],
    drawCount: first.length + second.length,
  };
}

describe("estimates", () => {
  it("are quantiles over all draws of all combinations, straight between neighbours", () => {
    const values = Array.from({ length: 100 }, (_, i) => i + 1);
    const posterior = posteriorOf(values.slice(50), values.slice(0, 50));
    // Draw i of a hundred stands for (i - ½) %, so 5 % lies between 5 and 6.
    expect(estimate(posterior, ({ capacityAh }) => capacityAh)).toEqual({ value: 50.5, low90: 5.5, high90: 95.5, low95: 3, high95: 98 });
    expect(probabilityBelow(posterior, ({ capacityAh }) => capacityAh, 25.5)).toBe(0.25);
  });

  it("leave draws without a number out, and are none where all are", () => {
    const posterior = posteriorOf([1, Number.NaN, 3], []);
    expect(estimate(posterior, ({ capacityAh }) => capacityAh)?.value).toBe(2);
    expect(estimate(posteriorOf([Number.NaN], []), ({ capacityAh }) => capacityAh)).toBeUndefined();
  });

  it("begin at nought, and end at full, where they come near it", () => {
    const near = { value: 0.4, low90: 0.2, high90: 2, low95: 0.1, high95: 3 };
    expect(fromNought(near, 0.5)).toEqual({ value: 0, low90: 0, high90: 2, low95: 0, high95: 3 });
    expect(fromNought(near, 0.15)).toEqual({ ...near, low95: 0 });
    const share = { value: 0.992, low90: -0.1, high90: 0.997, low95: -0.2, high95: 1.01 };
    expect(withinShare(share, 0.01)).toEqual({ value: 1, low90: 0, high90: 1, low95: 0, high95: 1 });
    expect(withinShare({ ...share, value: 0.98 }, 0.01).value).toBe(0.98);
  });
});
