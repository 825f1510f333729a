import { holdingVoltage } from "../../measure/figures/holding-voltage.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { floatWindowOf } from "../float-window.ts";

/**
 * Judges the claim that the charger may stay connected for a season, by the voltage it holds.
 *
 * @returns undefined where the mode makes no such claim
 */
export function judgeSeason(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.holdsForSeason;
  if (claim?.value !== true) return undefined;
  const window = floatWindowOf(context.battery);
  const outcome = holdingVoltage.compute(context);
  const common = {
    id: "claim-season",
    label: "May stay connected",
    unit: "V",
    claimed: null,
    claimedWords: claim.words ?? "may stay connected",
    claimedFrom: claim.from,
    acceptLow: window.lowV,
    acceptHigh: window.highV,
    measuredWords: null,
    rule: `held voltage inside the float window of this kind of battery: ${window.words}`,
    probability: null,
    doubts: [],
  };
  if ("absent" in outcome)
    return {
      ...common,
      measured: null,
      low: null,
      high: null,
      outcome: "not put to the test",
      why: outcome.why,
      wouldSettle: "a recording, or a voltmeter reading with the charger connected, days after it reported full",
      figure: null,
    };
  const halfWidth = context.rules.coverageFactor * (outcome.standardUncertainty ?? 0);
  const low = outcome.value - halfWidth;
  const high = outcome.value + halfWidth;
  const verdict =
    low >= window.lowV && high <= window.highV ? "meets" : high < window.lowV ? "short of" : low > window.highV ? "above" : "cannot tell";
  return {
    ...common,
    measured: outcome.value,
    low: outcome.standardUncertainty === undefined ? null : low,
    high: outcome.standardUncertainty === undefined ? null : high,
    outcome: outcome.standardUncertainty === undefined ? "cannot tell" : verdict,
    why: `${outcome.value.toFixed(2)} V is held`,
    wouldSettle: verdict === "cannot tell" ? "a more accurate voltmeter" : null,
    figure: "test#holding-voltage",
  };
}
