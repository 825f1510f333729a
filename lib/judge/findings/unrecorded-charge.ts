import { chargeUnrecorded } from "../../measure/figures/charge-unrecorded.ts";
import { isSealed } from "../../measure/test-context.ts";
import type { FindingDefinition } from "../define-finding.ts";

export const unrecordedCharge: FindingDefinition = {
  id: "unrecorded-charge",
  subject: "Did charge go in that nobody recorded?",
  explain:
    "Density says how much charge went in; the logs say how much was seen. The difference, where it is clear of both errors, went in unseen.",
  source: "Faraday's law against the log.",
  checkedBy: ["Demo logs against the generator's truth"],
  judge(context) {
    if (isSealed(context.battery)) return undefined;
    const outcome = chargeUnrecorded.compute(context);
    const figures = ["test#charge-unrecorded", "test#charge-required", "test#charge-recorded"];
    if ("absent" in outcome) {
      if (outcome.absent !== "not applicable") return undefined;
      return {
        verdict: "none shows",
        weight: "note",
        sentence: "The recorded charge accounts for the density that was gained.",
        why: [outcome.why],
        wouldSettle: null,
        figures,
        doubts: [...(outcome.doubts ?? [])],
      };
    }
    const low = outcome.interval?.low ?? 0;
    const high = outcome.interval?.high ?? outcome.value;
    if (low > 0)
      return {
        verdict: "yes",
        weight: "caution",
        sentence: `Between ${low.toFixed(0)} and ${high.toFixed(0)} Ah went into the battery while nobody recorded: the charger worked longer than the logs show.`,
        why: ["the density gained needs more charge than was recorded, beyond the error of both"],
        wouldSettle: "a recorder that does not stop by itself, or a clamp-meter reading at each visit",
        figures,
        doubts: [...(outcome.doubts ?? [])],
      };
    if (outcome.interval === undefined)
      return {
        verdict: "cannot tell",
        weight: "unsure",
        sentence: "Whether charge went in unrecorded cannot be told: how far the recorder may be off is not stated.",
        why: [`about ${outcome.value.toFixed(0)} Ah more than was recorded, with no interval that could be defended`],
        wouldSettle: "the recorder's accuracy, from its data sheet or a calibration",
        figures,
        doubts: [...(outcome.doubts ?? [])],
      };
    return {
      verdict: "cannot tell",
      weight: "unsure",
      sentence: `Whether charge went in unrecorded cannot be told: up to ${high.toFixed(0)} Ah would go unnoticed.`,
      why: ["recorded charge and density agree within their errors"],
      wouldSettle: "the mass of acid per cell, or a finer hydrometer",
      figures,
      doubts: [...(outcome.doubts ?? [])],
    };
  },
};
