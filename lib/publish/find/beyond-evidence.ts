/** Where an answer leaves what was tested, or what the maker names. */
import type { Construction } from "../../project/index.ts";
import type { FindMode } from "./find-data.ts";
import { kindLabel, type Question } from "./question.ts";

/** A battery this many times as large as the largest tested, or as small as the smallest, is far from the evidence. Our judgement. */
const farFactor = 2;
/** Outside of these the maker's own words on temperature are shown, °C. */
const ordinaryAirC = { low: 5, high: 35 } as const;

/** Flooded batteries differ by less than one battery from the next (docs/projection.md); EFB, AGM and gel are kinds of their own. */
const coarse = (kind: Construction): string => (kind.startsWith("flooded") ? "flooded" : kind);

/** Sentences of warning for one mode; none where the question lies within what was tested and is named. */
export function beyondEvidence(
  { ratedAh, kind, airC }: Question,
  { testedOn, claimedAh, kindWords, temperatureWords }: Pick<FindMode, "testedOn" | "claimedAh" | "kindWords" | "temperatureWords">,
): string[] {
  const sizes = testedOn.map(({ capacityAh }) => capacityAh);
  const kinds = [...new Set(testedOn.map(({ construction }) => coarse(construction)))];
  const [smallest, largest] = [Math.min(...sizes), Math.max(...sizes)];
  const warnings: string[] = [];
  if (claimedAh !== null && (ratedAh < claimedAh.low || ratedAh > claimedAh.high))
    warnings.push(`Outside the ${claimedAh.low} to ${claimedAh.high} Ah that the maker names.`);
  if (ratedAh > farFactor * largest) warnings.push(`Beyond the evidence: the largest battery it was tested on has ${largest} Ah.`);
  if (ratedAh < smallest / farFactor) warnings.push(`Beyond the evidence: the smallest battery it was tested on has ${smallest} Ah.`);
  if (kinds.length > 0 && !kinds.includes(coarse(kind)))
    warnings.push(
      `Beyond the evidence: tested on ${kinds.join(" and ")}, not on ${kindLabel(kind)}.${kindWords === null ? "" : ` The maker's words: ${kindWords}.`}`,
    );
  if (temperatureWords !== null && (airC < ordinaryAirC.low || airC > ordinaryAirC.high))
    warnings.push(`Mind the temperatures that the maker names: ${temperatureWords}.`);
  return warnings;
}
