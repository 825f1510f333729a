import { chargeUnrecorded } from "../../measure/figures/charge-unrecorded.ts";
import { isSealed, type TestContext } from "../../measure/test-context.ts";
import { examinationOf } from "../../measure/witnesses.ts";
import type { Finding } from "../../nouns/finding.ts";
import type { CrossExamination } from "../../reconcile/index.ts";
import { formatInterval } from "../../units/format.ts";
import type { FindingDefinition } from "../define-finding.ts";

export const unrecordedCharge: FindingDefinition = {
  id: "unrecorded-charge",
  subject: "Did charge go in that nobody recorded?",
  explain:
    "Density, rest voltage and cranking current say how much charge the battery holds; the logs say how much was seen. What no other explanation accounts for went in unseen. Where the readings allow no cross-examination, density alone is held against the log.",
  source: "docs/reconciliation.md; Faraday's law against the log.",
  checkedBy: ["Demo logs against the generator's truth"],
  judge(context) {
    return byAllWitnesses(examinationOf(context)) ?? byDensityAlone(context);
  },
};

const figures = ["test#charge-unrecorded", "test#charge-recorded", "test#charge-taken"];

/** A cause counts as shown from this probability on, and as ruled out below the other; between them nobody can tell. Our rule. */
const shown = 0.6;
const ruledOut = 0.2;

/** The cross-examination's answer; undefined where it could not be made. */
function byAllWitnesses(examination: CrossExamination): Omit<Finding, "id" | "subject"> | undefined {
  if (!examination.examined) return undefined;
  const cause = examination.causes.find(({ id }) => id === "charge-unrecorded");
  if (cause === undefined) return undefined;
  const { low95, high95 } = examination.unrecordedAh;
  if (cause.hiddenBecause !== null) return withoutTheCause(examination, cause.hiddenBecause);
  const why = [
    `by density, rest voltage, recorded charge and cranking current together, the probability that charge went in unrecorded is ${(100 * cause.probability).toFixed(0)} %, and its amount ${low95.toFixed(1)} to ${high95.toFixed(1)} Ah (95 %)`,
  ];
  if (cause.probability >= shown)
    return {
      verdict: "yes",
      weight: "caution",
      sentence: wentIn(low95, high95),
      why,
      wouldSettle: "a recorder that does not stop by itself, or a clamp-meter reading at each visit",
      figures,
      doubts: [],
    };
  if (cause.probability <= ruledOut)
    return {
      verdict: "none shows",
      weight: "note",
      sentence: "The recorded charge accounts for what the battery gained.",
      why,
      wouldSettle: null,
      figures,
      doubts: [],
    };
  return {
    verdict: "cannot tell",
    weight: "unsure",
    sentence: `Whether charge went in unrecorded cannot be told: up to ${high95.toFixed(0)} Ah would go unnoticed.`,
    why,
    wouldSettle: "a clamp-meter reading just before the charger is disconnected",
    figures,
    doubts: [],
  };
}

/**
 * Where no record can fall short, all was seen, or what may have gone in went in where there is no record at all.
 * With a single visit there is nothing to ask.
 */
function withoutTheCause(
  { unrecordedAh: { low95, high95 }, intervals }: Extract<CrossExamination, { examined: true }>,
  because: string,
): Omit<Finding, "id" | "subject"> | undefined {
  if (intervals.length === 0) return undefined;
  const common = { why: [because], figures, doubts: [] };
  if (high95 === 0)
    return {
      ...common,
      verdict: "none can have",
      weight: "note",
      sentence: `No charge can have gone in unseen: ${because}.`,
      wouldSettle: null,
    };
  return {
    ...common,
    verdict: "cannot tell",
    weight: "unsure",
    sentence: `For some of the time between visits no log tells the charge: ${formatInterval(low95, high95, "Ah")} may have gone in there.`,
    wouldSettle: "a recorder at every connection, or a clamp-meter reading at each visit",
  };
}

function wentIn(lowAh: number, highAh: number): string {
  return `${formatInterval(lowAh, highAh, "Ah")} went into the battery while nobody recorded: the charger worked longer than the logs show.`;
}

/** What density against the log says, where nothing else was read. */
function byDensityAlone(context: TestContext): Omit<Finding, "id" | "subject"> | undefined {
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
      sentence: wentIn(low, high),
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
}
