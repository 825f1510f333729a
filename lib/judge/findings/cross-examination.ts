import { examinationOf } from "../../measure/witnesses.ts";
import type { Finding } from "../../nouns/finding.ts";
import type { Examined } from "../../reconcile/index.ts";
import type { FindingDefinition } from "../define-finding.ts";

/** A cause counts as the explanation from this probability on; where none reaches it, several are left. Our rule. */
const clearProbability = 0.6;
/** A further reading is named only where it would tell at least this much, bit; our rule. */
const worthBits = 0.02;

export const crossExamination: FindingDefinition = {
  id: "cross-examination",
  subject: "Do density, voltage, charge and cranking current tell the same story?",
  explain:
    "A battery has four witnesses, and each can mislead: the hydrometer dips into the top of the cell, rest voltage carries surface charge, a recorder stops early, a rating flatters. A small probabilistic model weighs all readings together, ranks what would explain their disagreement, and names the reading that would tell the explanations apart.",
  source: "docs/reconciliation.md, with every prior; acid balance after Faraday's law, rest voltage after Bode.",
  checkedBy: ["Generated campaigns with a known truth", "Simulation-based calibration (Talts et al. 2018)"],
  judge(context) {
    const examined = examinationOf(context);
    if (!examined.examined)
      return {
        verdict: "not examined",
        weight: "untested",
        sentence: `The battery's readings could not be held against each other: ${examined.why}.`,
        why: [examined.why],
        wouldSettle: "density, rest voltage after a rest, and a log, at two visits or more",
        figures: [],
        doubts: [],
      };
    return {
      ...verdictOf(examined),
      sentence: examined.buyer.join(" "),
      why: [...examined.statements],
      wouldSettle: settling(examined),
      figures: ["test#charge-recorded", "test#charge-required", "test#charge-unrecorded"],
      doubts: [...examined.assumptions, ...examined.unseen],
    };
  },
};

/** Causes are weighed one by one: where two combinations share one, it can be clear while the other stays open. */
function verdictOf({ causes }: Examined): Pick<Finding, "verdict" | "weight"> {
  const clear = causes.filter((cause) => cause.hiddenBecause === null && cause.probability >= clearProbability);
  if (clear.length === 0) return { verdict: "cannot tell which of several", weight: "unsure" };
  if (clear.some((cause) => cause.id === "nothing-to-explain")) return { verdict: "yes", weight: "good" };
  return { verdict: clear.map((cause) => cause.label.toLowerCase()).join(" and "), weight: "caution" };
}

function settling({ nextReading }: Examined): string | null {
  return nextReading === null || nextReading.expectedBits < worthBits ? null : `${nextReading.label}: ${nextReading.why}`;
}
