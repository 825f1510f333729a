/** What the reference charge costs: the one cost that all chargers can be held against each other by. */
import type { PublishedSpread } from "../../judge/forecast/forecast-mode.ts";
import { type NotMeasured, notMeasured } from "../../measure/define.ts";
import { statedCosts } from "../../measure/stated-costs.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import type { Figure } from "../../nouns/figure.ts";
import { type CostOfResult, costPerResult, type Estimate } from "../../project/index.ts";

export const runningCostId = "reference-running-cost";

/** How these figures are explained, for their method pages. */
export const referenceCostMethods = [
  {
    id: runningCostId,
    version: 2,
    label: "Running cost of the reference charge",
    unit: "currency of the price",
    explain:
      "What one charge of the reference battery costs once the charger is paid for: energy from the mains until 95 % at the site's price, and one visit of the owner where the site values their time.",
    formula: "E_mains · price per kWh + one visit",
    source: "Our definition: no standard defines it. Interval: that of the energy, open above where its is (docs/projection.md).",
    checkedBy: ["Worked by hand in a small test record"],
  },
  {
    id: "reference-cost",
    version: 2,
    label: "Cost of the reference charge",
    unit: "currency of the price",
    explain:
      "The running cost with the purchase spread over the uses of the charger's life. Every charger is held to the same charge, whatever it was tested on.",
    formula: "price / uses + running cost",
    source:
      "Our definition: no standard defines it. Intervals: each input moved alone, root of the sum of squares on either side (JCGM 100, 5.1.2).",
    checkedBy: ["Worked by hand in a small test record"],
  },
] as const;

/**
 * @param context  any test of the mode: price, uses, electricity and rates are read from it
 * @param mainsKWh  its energy from the mains until 95 %, null for never: a charge that stops short is no cheap one, but none
 * @param short  the doubt that says how often it does, which leaves the cost open above
 * @param evidence  the recordings that the forecast rests on
 * @returns two figures, projected; absent with the reason where a price is not stated or the charge does not end
 */
export function referenceCosts(
  context: TestContext,
  modeId: string,
  mainsKWh: PublishedSpread,
  short: readonly string[],
  evidence: readonly Evidence[],
): Figure[] {
  const cost = costOf(context, mainsKWh);
  const currency = context.charger.price?.currency ?? "";
  const figureOf = (id: string, label: string, pick: (made: CostOfResult) => Estimate): Figure => {
    const common = { id, of: `mode/${modeId}`, label, unit: currency, basis: "projected" as const, method: `${id}/2` };
    if ("absent" in cost)
      return {
        ...common,
        value: null,
        low: null,
        high: null,
        evidence: [...evidence],
        absent: { kind: cost.absent, why: cost.why },
        doubts: [],
      };
    const { value, low, high } = pick(cost.made);
    return {
      ...common,
      value,
      low,
      high: mainsKWh.high === null ? null : high,
      evidence: [...evidence, context.recordEvidence],
      absent: null,
      doubts: ["projected, not seen", ...short, ...cost.doubts],
    };
  };
  return [
    figureOf(runningCostId, "Running cost of the reference charge", ({ runningPerResult }) => runningPerResult),
    figureOf("reference-cost", "Cost of the reference charge, purchase included", ({ perResult }) => perResult),
  ];
}

type Made = { readonly made: CostOfResult; readonly doubts: readonly string[] };
function costOf(context: TestContext, { value, low, high }: PublishedSpread): Made | NotMeasured {
  const stated = statedCosts(context, 1);
  if ("absent" in stated) return stated;
  if (value === null)
    return notMeasured(
      "not reached",
      "the reference battery is not brought to 95 % in half of the draws or more, so there is no result to pay for",
    );
  const made = costPerResult({ ...stated.inputs, energy: { mainsKWh: { value, low: low ?? value, high: high ?? value } } });
  return "refused" in made ? notMeasured("cannot tell", made.refused) : { made, doubts: stated.doubts };
}
