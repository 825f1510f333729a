import { freezingPointC, frostWarningDensity } from "../../electrochem/freezing.ts";
import type { Evidence } from "../../nouns/evidence.ts";
import { type FigureDefinition, type FigureOutcome, notMeasured } from "../define.ts";
import { isSealed } from "../test-context.ts";
import type { Visit } from "../visit.ts";

/** The strongest acid that the tables of freezing points reach, kg/l at 25 °C. */
const strongestDensity = 1.275;

/** How far the tables may be off, K: up to the density of the frost warning, and above it. */
const tableErrorK = { weak: 1, strong: 3 } as const;

/** Cells that differ by more than this freeze at clearly different temperatures, kg/l; our rule. */
const clearSpread = 0.02;

export const freezingPoint: FigureDefinition<Visit> = {
  id: "freezing-point",
  label: "Freezing point of the acid",
  unit: "°C",
  version: 1,
  explain:
    "Where the first ice forms in acid of the mean density read at this visit: near −8 °C at 1.10 kg/l, −15 °C at 1.15, −27 °C at 1.20. Weaker cells freeze earlier. A frozen battery can be cracked inside and must never be charged: thaw it slowly, look for leaks, and leave doubtful ones to a battery service.",
  formula: "w(ρ₂₅) → freezing point, by table",
  source: "CRC Handbook, freezing-point depression of sulphuric acid, to 34 %; trade tables above it.",
  checkedBy: ["Freezing points in service manuals: 1.100, 1.150, 1.200 and 1.250"],
  compute: ({ context, reading }) => {
    if (isSealed(context.battery))
      return notMeasured("not applicable", "the battery is sealed, so its density cannot be read, nor its freezing point be told from it");
    if (reading.density === undefined) return notMeasured("not measured", "no density that can be used was read at this visit");
    const { meanAt25C, standardUncertainty, cells, evidence, doubts } = reading.density;
    return freezingPointOf(
      meanAt25C,
      standardUncertainty === undefined ? undefined : context.rules.coverageFactor * standardUncertainty,
      evidence,
      [...doubts, ...doubtOfWeakest(cells)],
    );
  },
};

/**
 * Freezing point of acid, with the error of the tables and of the density.
 * @param densityAt25C     kg/l
 * @param halfWidthKgPerL  expanded uncertainty of the density; undefined where not known, and then no interval is given
 */
function freezingPointOf(
  densityAt25C: number,
  halfWidthKgPerL: number | undefined,
  evidence: readonly Evidence[],
  doubts: readonly string[],
): FigureOutcome {
  if (densityAt25C > strongestDensity)
    return notMeasured(
      "not applicable",
      `acid above ${strongestDensity} kg/l is stronger than the tables reach; it stays liquid to −50 °C or below (from memory)`,
      evidence,
    );
  const value = freezingPointC(densityAt25C);
  if (Number.isNaN(value)) return notMeasured("cannot tell", "the density read is that of no battery acid", evidence);
  const errorK = densityAt25C <= frostWarningDensity ? tableErrorK.weak : tableErrorK.strong;
  return {
    value,
    interval:
      halfWidthKgPerL === undefined
        ? undefined
        : {
            low: freezingPointC(Math.min(strongestDensity, densityAt25C + halfWidthKgPerL)) - errorK,
            high: Math.min(0, freezingPointC(Math.max(1, densityAt25C - halfWidthKgPerL)) + errorK),
          },
    evidence,
    doubts,
  };
}

function doubtOfWeakest(cells: readonly { readonly cell: number; readonly at25C: number }[]): string[] {
  const densities = cells.map(({ at25C }) => at25C);
  const weakest = cells.find(({ at25C }) => at25C === Math.min(...densities));
  if (weakest === undefined || Math.max(...densities) - weakest.at25C < clearSpread) return [];
  return [
    `cell ${weakest.cell}, the weakest at ${weakest.at25C.toFixed(3)} kg/l, freezes first, near ${freezingPointC(weakest.at25C).toFixed(0)} °C`,
  ];
}
