import { describe, expect, it } from "vitest";
import { beliefsOf, emptyDensityUncertainty } from "../../../lib/project/battery-priors.ts";
import { partsOfStart } from "../../../lib/project/parts-of-start.ts";
import { startShareFromDensity } from "../../../lib/project/start-share.ts";

const beliefs = beliefsOf("flooded", "used");
const density = { full: 1.28, empty: 1.12 };

describe("the parts of a start", () => {
  it("add up to the whole, as roots of squares do, and hang on the empty density the less the fuller the battery is", () => {
    const spans = [1.13, 1.2, 1.27].map((density25) => {
      const { share, standardUncertainty, perEmptyDensity } = startShareFromDensity(density25, 0.002, density);
      const parts = partsOfStart(
        { startShare: share, startShareUncertainty: standardUncertainty, startSharePerEmptyDensity: perEmptyDensity },
        beliefs,
      );
      expect(Math.hypot(parts.ofEmptyDensity, parts.ownUncertainty)).toBeCloseTo(standardUncertainty, 12);
      expect(parts.middle).toBe(share);
      return Math.abs(parts.ofEmptyDensity);
    });
    expect(spans).toEqual([...spans].sort((a, b) => b - a));
  });

  it("move the middle as the acid balance does when other batteries have moved the empty density", () => {
    const stated = startShareFromDensity(1.2, 0.002, density);
    const moved = { ...beliefs, emptyDensityOffset: { mean: 0.004, standardDeviation: emptyDensityUncertainty, isLog: false } };
    const { middle } = partsOfStart(
      { startShare: stated.share, startShareUncertainty: stated.standardUncertainty, startSharePerEmptyDensity: stated.perEmptyDensity },
      moved,
    );
    // The straight line bends a little: 0.001 of the charge for 0.004 kg/l.
    expect(middle).toBeCloseTo(startShareFromDensity(1.2, 0.002, { ...density, empty: 1.124 }).share, 2);
    expect(middle).toBeLessThan(stated.share);
  });

  it("leave a start alone that hangs on no density", () => {
    expect(partsOfStart({ startShare: 0.4, startShareUncertainty: 0.05 }, beliefs)).toEqual({
      middle: 0.4,
      ofEmptyDensity: 0,
      ownUncertainty: 0.05,
    });
  });
});
