/** Chargers that were recorded to hold more than such a battery is commonly given: quick, and dear to the battery. */
import type { ChargerBehaviour, Construction } from "../../project/index.ts";
import { withUnit } from "../../units/format.ts";
import type { FindSpeech } from "./find-speech.ts";

/**
 * The highest voltage that batteries of a kind are commonly charged with at 25 °C, V a cell: 14.4 V on a 12 V gel, 14.8 V on AGM and EFB,
 * 15.0 V on flooded. Common practice; sheets differ by some tenths of a volt, and allow more in the cold.
 */
const commonLimitVPerCell: Readonly<Record<Construction, number>> = {
  "flooded-antimony": 2.5,
  "flooded-calcium": 2.5,
  flooded: 2.5,
  EFB: 14.8 / 6,
  AGM: 14.8 / 6,
  gel: 2.4,
};

/**
 * A sentence where a charger's highest voltage is surely above that limit: the least that its recordings allow counts.
 * @param cells  cells in series of the battery
 */
export function voltageWarning(
  construction: Construction,
  cells: number,
  { steps }: ChargerBehaviour,
  { formats, words }: FindSpeech,
): string | undefined {
  const highest = steps
    .flatMap((step) => ("voltageV" in step ? [step.voltageV] : "untilV" in step && step.untilV !== undefined ? [step.untilV] : []))
    .sort((a, b) => b.low - a.low)[0];
  const limitV = commonLimitVPerCell[construction] * cells;
  if (highest === undefined || highest.low <= limitV) return undefined;
  const isSealed = construction === "AGM" || construction === "gel";
  return words.warnings.voltage(formats.formatNumber(highest.low, 1), withUnit(formats.formatNumber(limitV, 1), "V"), isSealed);
}
