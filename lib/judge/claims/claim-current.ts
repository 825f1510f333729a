import { chargerLimitedCurrent } from "../../measure/figures/charger-limited-current.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { judgeNumber, notTested, whyNoStages } from "./shared.ts";

const subject = { id: "claim-current", label: "Output current", unit: "A" };

/**
 * Judges the current on the label.
 *
 * Only stretches in which the charger limited the current count: the battery may take less than a charger could give, and then the
 * claim was not put to the test. The highest mean over the site's window within such a stretch is held against the claim.
 *
 * @returns undefined where the mode claims no current
 */
export function judgeCurrent(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.currentA;
  if (claim === undefined) return undefined;
  const { rules } = context;
  const definition = chargerLimitedCurrent(rules);
  const best = context.connections
    .flatMap((connection) => connection.recordings)
    .flatMap((recording) => {
      const outcome = definition.compute(recording);
      return "absent" in outcome ? [] : [{ ...outcome, recording }];
    })
    .sort((a, b) => b.value - a.value)[0];
  if (best === undefined)
    return notTested(
      subject,
      claim,
      rules.currentTolerance,
      whyNoStages(context) ?? "no recording shows a stretch in which the charger, and not the battery, limited the current",
      "a recording from the first minute of a charge on a well discharged battery",
    );
  return judgeNumber(
    subject,
    claim,
    {
      value: best.value,
      standardUncertainty: best.standardUncertainty,
      figure: `recording/${best.recording.id}#${definition.id}`,
      why: `${best.value.toFixed(2)} A was held for ${rules.sustainedWindowS} s in ${best.recording.id} while the charger limited the current`,
      doubts: [],
    },
    rules.currentTolerance,
    rules,
  );
}
