/** What can hurt with this very battery, told before any result. Common practice; a sheet, a code or a licensed person says more. */
import { freezingPointC } from "../../electrochem/freezing.ts";
import { sensibleCurrentShare } from "../../project/index.ts";
import { formatNumber } from "../../units/format.ts";
import { familyOf } from "./find-data.ts";
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
export function cautionsFor({ kind, ratedAh, airC }: Question, start: StartOfCharge): Caution[] {
  const cautions: Caution[] = [];
  if (mayBeFrozen({ airC }, start))
    cautions.push({
      section: "frozen",
      words: `It may be frozen: as flat as this its acid freezes at about ${formatNumber(freezingPointC(start.lowestDensityAt25C), 0)} °C, and its top sooner. Never charge a frozen battery. Thaw it slowly in an aired place, look for cracks and bulges, and ask again with the temperature it then has.`,
    });
  if (start.share <= veryFlat)
    cautions.push({
      section: "hydrogen",
      words:
        "It is very flat: it may not come back, a dead cell can make it hot, and some chargers do not start on a battery below some volts, of which no forecast here knows. Watch the first hour; stop when it grows hot, hisses or smells.",
    });
  if (familyOf(kind) === "sealed")
    cautions.push({
      section: "sealed",
      words:
        "It is sealed: do not open it, and use only a mode that its maker allows. Too high a voltage dries it out for good and can heat it without end.",
    });
  if (airC > hotC)
    cautions.push({
      section: "hydrogen",
      words: "It is hot where it stands: let it cool first; a hot battery gasses hard and takes harm.",
    });
  cautions.push({
    section: "hydrogen",
    words: `Such a battery should get no more than about ${(sensibleCurrentShare[kind] * ratedAh).toPrecision(2)} A (${sensibleCurrentShare[kind]} of its capacity, common practice) unless its maker's sheet says otherwise. Air the place: charging gives off hydrogen.`,
  });
  return cautions;
}
