import { type FigureDefinition, notMeasured } from "../define.ts";
import { findTargetOutcome } from "../growth.ts";
import { isSealed, type TestContext } from "../test-context.ts";
import { energyMains } from "./energy-mains.ts";

export const costPerResult: FigureDefinition<TestContext> = {
  id: "cost-per-result",
  label: "Cost per result",
  unit: (context) => context.charger.price?.currency ?? "",
  version: 1,
  explain:
    "What it costs to bring this battery to its target once: the purchase spread over the stated number of uses, and the energy at the stated price. The owner's time is left out.",
  formula: "price / uses + E_mains · price per kWh",
  source: "Our definition: no standard defines it.",
  checkedBy: ["Worked by hand in a small test record"],
  compute: (context) => {
    const { price } = context.charger;
    const { electricity } = context.site;
    if (isSealed(context.battery))
      return notMeasured("not applicable", "a result is a battery at its target density, which cannot be read on a sealed one");
    const outcome = findTargetOutcome(context);
    if (outcome.kind === "no target" || outcome.kind === "no density" || outcome.kind === "unplaced")
      return notMeasured(
        outcome.kind === "no target" ? "not stated" : outcome.kind === "no density" ? "not measured" : "cannot tell",
        `whether the target was reached is not known: ${outcome.why}`,
        [context.recordEvidence],
      );
    if (outcome.kind !== "reached")
      return notMeasured("not reached", "the test brought no battery to its target, so there is no result to pay for", [
        context.recordEvidence,
      ]);
    if (price === undefined) return notMeasured("not stated", "no price of the charger is stated");
    if (electricity === undefined) return notMeasured("not stated", "the site states no price of electricity");
    if (electricity.currency !== price.currency)
      return notMeasured("cannot tell", `the charger's price is in ${price.currency} and electricity's in ${electricity.currency}`);
    const energy = energyMains.compute(context);
    if ("absent" in energy) return notMeasured(energy.absent, energy.why, energy.evidence ?? []);
    const uses = context.charger.lifeUses ?? context.rules.lifeUses;
    const costOf = (energyKWh: number): number => price.amount / uses + energyKWh * electricity.pricePerKWh;
    const halfWidth = energy.standardUncertainty === undefined ? undefined : context.rules.coverageFactor * energy.standardUncertainty;
    const interval =
      energy.interval ?? (halfWidth === undefined ? undefined : { low: energy.value - halfWidth, high: energy.value + halfWidth });
    return {
      value: costOf(energy.value),
      interval: interval === undefined ? undefined : { low: costOf(interval.low), high: costOf(interval.high) },
      evidence: [...energy.evidence, context.recordEvidence],
      doubts: [
        ...(energy.doubts ?? []),
        `spread over ${uses} uses, ${context.charger.lifeUses === undefined ? "the site's rule" : "as the charger's record states"}; the interval is that of the energy alone`,
      ],
    };
  },
};
