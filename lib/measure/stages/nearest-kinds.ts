/** Says of a stretch that fits no kind which two kinds it comes nearest to, and what it lacks for each. */
import { stageKinds } from "../../nouns/stage.ts";
import { currentHeldBelow, type Ends, elasticityOf, heldShareV } from "./pieces.ts";

/** A kind, how many times its limit the stretch is off (1 would be just inside), and that in words. */
type Candidate = { readonly label: string; readonly timesOff: number; readonly lacks: string };

/**
 * Returns the two nearest kinds with what each lacks, as one clause.
 *
 * Nearness is how many times its own limit a stretch overshoots: the voltage's change for a held voltage, the elasticity for a held
 * current, the current for a rest, and the way that the voltage went for a falling current.
 *
 * @param ends   ends of the stretch; where a logarithm has no meaning, a held current counts as far off
 * @param noneA  below this a current is none, A
 */
export function tellNearestKinds(ends: Ends, noneA: number): string {
  const { startV, endV, startA, endA, meanV, meanA } = ends;
  const movedShareV = Math.abs(endV - startV) / Math.abs(meanV);
  const elasticity = elasticityOf(ends);
  const candidates: Candidate[] = [
    {
      label: stageKinds["constant-voltage"].label,
      timesOff: movedShareV / heldShareV,
      lacks: `the voltage changed by ${percent(movedShareV)}, and held is up to ${percent(heldShareV)}`,
    },
    {
      label: stageKinds["constant-current"].label,
      timesOff: Number.isNaN(elasticity) ? Number.POSITIVE_INFINITY : elasticity / currentHeldBelow,
      lacks: `the current changed ${elasticity.toFixed(1)} times as much as the voltage by ratio, and held is up to ${currentHeldBelow} times`,
    },
    {
      label: stageKinds.rest.label,
      timesOff: noneA > 0 ? Math.abs(meanA) / noneA : Number.POSITIVE_INFINITY,
      lacks: `${meanA.toFixed(2)} A flowed, and none is up to ${noneA.toFixed(2)} A`,
    },
    {
      label: stageKinds.drooping.label,
      // As far off as the voltage would have to go back to stand still.
      timesOff: endA < startA ? 1 + (100 * (startV - endV)) / Math.abs(meanV) : Number.POSITIVE_INFINITY,
      lacks: `the voltage fell by ${(startV - endV).toFixed(2)} V along with the current, and should have risen`,
    },
  ];
  const nearest = candidates.sort((a, b) => a.timesOff - b.timesOff).slice(0, 2);
  return `nearest are ${nearest.map(({ label, lacks }) => `"${label}", but ${lacks}`).join("; and ")}`;
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}
