/** What can hurt with this very battery, told before any result. Common practice; a sheet, a code or a licensed person says more. */
import { freezingPointC } from "../../electrochem/freezing.ts";
import { sensibleCurrentShare } from "../../project/index.ts";
import { familyOf } from "./find-data.ts";
import type { FindSpeech } from "./find-speech.ts";
import type { Question } from "./question.ts";
import type { StartOfCharge } from "./start-of-charge.ts";

/** A caution, and the section of the page of cautions that says more. */
export type Caution = { readonly section: "frozen" | "sealed" | "hydrogen"; readonly words: string };

/** Acid layers, and its weak top freezes first, K: the margin of lib/project/battery-classes.ts. */
const frostMarginK = 3;
/** At or below this share a battery may not come back: our line, well below the 20 % of common warnings. */
const veryFlat = 0.1;
/** Charging a battery hotter than this shortens its life, °C; common practice (45 to 50 °C as the acid's limit, which charging itself warms). */
const hotC = 40;

/**
 * Whether a battery may be frozen where it stands: by the weakest acid that its reading allows, and with a margin for layered acid. Stronger
 * acid than the table of freezing points holds gives NaN there: no frost for it to fear.
 */
export function mayBeFrozen({ airC }: Pick<Question, "airC">, { lowestDensityAt25C }: Pick<StartOfCharge, "lowestDensityAt25C">): boolean {
  return airC < freezingPointC(lowestDensityAt25C) + frostMarginK;
}

/** The cautions that this battery calls for, worst first; the one about current stands always. */
export function cautionsFor({ kind, ratedAh, airC }: Question, start: StartOfCharge, { formats, words }: FindSpeech): Caution[] {
  const told = words.cautions;
  const cautions: Caution[] = [];
  if (mayBeFrozen({ airC }, start))
    cautions.push({
      section: "frozen",
      words: told.frozen(formats.formatNumber(freezingPointC(start.lowestDensityAt25C), 0)),
    });
  if (start.share <= veryFlat)
    cautions.push({
      section: "hydrogen",
      words: told.veryFlat,
    });
  if (familyOf(kind) === "sealed")
    cautions.push({
      section: "sealed",
      words: told.sealed,
    });
  if (airC > hotC)
    cautions.push({
      section: "hydrogen",
      words: told.hot,
    });
  cautions.push({
    section: "hydrogen",
    words: told.current(
      formats.formatStated(Number((sensibleCurrentShare[kind] * ratedAh).toPrecision(2)), ""),
      formats.formatStated(sensibleCurrentShare[kind], ""),
    ),
  });
  return cautions;
}
