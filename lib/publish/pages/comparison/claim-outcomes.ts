/** What came of a charger's claims over all its modes, short enough for a cell. */
import { type JudgedClaim, missedFirst } from "../../../nouns/finding.ts";
import type { ChargerResult } from "../../results.ts";

export type ClaimOutcome = Pick<JudgedClaim, "id" | "label" | "outcome"> & {
  /** The modes of which it holds; none named where it holds of every mode that makes the claim. */
  readonly modes: readonly string[];
};

/** One entry for each claim and what came of it, claims in their own order, missed before met; none for a charger that claims nothing. */
export function claimOutcomes({ modes }: Pick<ChargerResult, "modes">): ClaimOutcome[] {
  const made = modes.flatMap(({ name, claims }) => claims.map(({ id, label, outcome }) => ({ id, label, outcome, mode: name })));
  const ids = [...new Set(made.map(({ id }) => id))];
  return ids.flatMap((id) => {
    const ofClaim = made.filter((claim) => claim.id === id);
    const came = missedFirst.filter((outcome) => ofClaim.some((claim) => claim.outcome === outcome));
    return came.map((outcome) => ({
      id,
      label: ofClaim[0]?.label ?? id,
      outcome,
      modes: came.length === 1 ? [] : ofClaim.filter((claim) => claim.outcome === outcome).map(({ mode }) => mode),
    }));
  });
}
