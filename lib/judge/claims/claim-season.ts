import { holdingVoltage } from "../../measure/figures/holding-voltage.ts";
import { temperatureOfHold } from "../../measure/long-hold.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { combine } from "../../units/uncertainty.ts";
import { decide } from "../decision-rule.ts";
import { floatWindowOf } from "../float-window.ts";

/**
 * Judges the claim that the charger may stay connected for a season, by the voltage it holds.
 *
 * @returns undefined where the mode makes no such claim
 */
export function judgeSeason(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.holdsForSeason;
  if (claim?.value !== true) return undefined;
  const window = floatWindowOf(context.battery, temperatureOfHold(context), context.rules.compensation);
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
  const held = { ...common, measured: outcome.value, figure: "test#holding-voltage", doubts: [...(outcome.doubts ?? [])] };
  const seen = `${outcome.value.toFixed(2)} V is held`;
  if (outcome.standardUncertainty === undefined)
    return {
      ...held,
      low: null,
      high: null,
      outcome: "cannot tell",
      why: `${seen}; the meter's accuracy is not stated, so the value cannot be held against the window`,
      wouldSettle: "the meter's accuracy, from its data sheet or a calibration",
    };
  const { decision: rule, coverageFactor } = context.rules;
  const { value } = outcome;
  const standardUncertainty = combine(outcome.standardUncertainty, window.standardUncertainty);
  const decision = decide({ value, standardUncertainty, acceptLow: window.lowV, acceptHigh: window.highV, rule, coverageFactor });
  return {
    ...held,
    low: value - coverageFactor * outcome.standardUncertainty,
    high: value + coverageFactor * outcome.standardUncertainty,
    outcome: decision.outcome,
    probability: Number.isNaN(decision.probabilityWithin) ? null : decision.probabilityWithin,
    why: `${seen}; ${decision.words}`,
    wouldSettle:
      decision.outcome !== "cannot tell"
        ? null
        : window.standardUncertainty > outcome.standardUncertainty
          ? "the same with the battery at 25 °C"
          : "a more accurate voltmeter",
  };
}
