/** Which causes these witnesses could show at all. A cause that no reading can touch keeps its prior and is not ranked. */
import type { Case } from "./case.ts";
import type { ExplanationId } from "./explanations.ts";

/** Why no reading of this case can show a cause, in words; null where one can. */
export function hiddenBecause(cause: ExplanationId, the: Case): string | null {
  const densities = the.visits.filter(({ density }) => !Number.isNaN(density)).length;
  const voltages = the.visits.filter(({ restV }) => !Number.isNaN(restV)).length;
  const cranks = Number.isNaN(the.crankingRatingA) ? 0 : the.visits.filter(({ crankingA }) => !Number.isNaN(crankingA)).length;
  switch (cause) {
    case "acid-not-mixed":
      if (the.sealed) return "the acid of a sealed battery is held in place, and no hydrometer reaches it";
      return densities === 0 ? "density was never read" : null;
    case "hydrometer-off":
      if (the.sealed) return "a sealed battery has no acid that a hydrometer reaches";
      return densities === 0 ? "density was never read" : null;
    case "charge-unrecorded": {
      if (the.intervals.length === 0) return "there was one visit only";
      const recorded = the.intervals.filter(({ recordedAh }) => !Number.isNaN(recordedAh));
      if (recorded.length === 0) return "no charge was recorded, so none can be missing from the record";
      if (recorded.some(({ mayHide }) => mayHide)) return null;
      return the.intervals.some(({ mayHide }) => mayHide)
        ? "where it recorded at all the recorder saw every hour, and between the other visits there is no record that could fall short"
        : "the recorder saw every hour on charge";
    }
    case "surface-charge":
      return the.visits.slice(1).some(({ restV }) => !Number.isNaN(restV)) ? null : "no rest voltage was read after a charge";
    case "weak-cell":
      return the.contrast !== undefined || (voltages > 0 && densities > 0) ? null : "the cells were not read one by one";
    case "rating-wrong":
      if (
        !Number.isNaN(the.dischargedAh) ||
        (densities + voltages > 1 && the.intervals.some(({ recordedAh }) => !Number.isNaN(recordedAh)))
      )
        return null;
      return cranks > 0 && densities + voltages > 0 ? null : "no charge was recorded between two readings";
  }
}
