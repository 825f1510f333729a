/** Where an answer leaves what was tested, or what the maker names. */
import type { Construction } from "../../project/index.ts";
import type { FindMode } from "./find-data.ts";
import type { FindSpeech } from "./find-speech.ts";
import type { Question } from "./question.ts";
import { statedWords } from "./stated-words.ts";

/** A battery this many times as large as the largest tested, or as small as the smallest, is far from the evidence. Our judgement. */
const farFactor = 2;
/** Outside of these the maker's own words on temperature are shown, °C. */
const ordinaryAirC = { low: 5, high: 35 } as const;

/** Flooded batteries differ by less than one battery from the next (docs/projection.md); EFB, AGM and gel are kinds of their own. */
const coarse = (kind: Construction): Construction => (kind.startsWith("flooded") ? "flooded" : kind);

/** Sentences of warning for one mode; none where the question lies within what was tested and is named. */
export function beyondEvidence(
  { ratedAh, kind, airC }: Question,
  { testedOn, claimedAh, kindWords, temperatureWords }: Pick<FindMode, "testedOn" | "claimedAh" | "kindWords" | "temperatureWords">,
  speech: FindSpeech,
): string[] {
  const { formats, words } = speech;
  const ah = (value: number): string => formats.formatStated(value, "");
  const sizes = testedOn.map(({ capacityAh }) => capacityAh);
  const kinds = [...new Set(testedOn.map(({ construction }) => coarse(construction)))];
  const [smallest, largest] = [Math.min(...sizes), Math.max(...sizes)];
  const warnings: string[] = [];
  if (claimedAh !== null && (ratedAh < claimedAh.low || ratedAh > claimedAh.high))
    warnings.push(words.warnings.outside(ah(claimedAh.low), ah(claimedAh.high)));
  if (ratedAh > farFactor * largest) warnings.push(words.warnings.largest(ah(largest)));
  if (ratedAh < smallest / farFactor) warnings.push(words.warnings.smallest(ah(smallest)));
  if (kinds.length > 0 && !kinds.includes(coarse(kind)))
    warnings.push(
      words.warnings.otherKind(
        kinds.map((tested) => words.kindNames[tested]),
        words.kindNames[kind],
        kindWords === null ? null : statedWords(kindWords, speech),
      ),
    );
  if (temperatureWords !== null && (airC < ordinaryAirC.low || airC > ordinaryAirC.high))
    warnings.push(words.warnings.temperatures(statedWords(temperatureWords, speech)));
  return warnings;
}
