/** How flat the battery is, from a word or a reading. */
import { chargeForDensityRise, densityAfterCharge } from "../../electrochem/acid-balance.ts";
import { densitiesByKind, flatnesses, startShareFromDensity, startShareFromRestVoltage } from "../../project/index.ts";
import type { FindSpeech } from "./find-speech.ts";
import { type Complaint, type Question, questionFields } from "./question.ts";

export type StartOfCharge = {
  /** Share of what the battery holds, 0 to 1, and its standard uncertainty. */
  readonly share: number;
  readonly standardUncertainty: number;
  /** kg/l of its acid; `lowest` is as weak as it may well be: two standard uncertainties below. */
  readonly densityAt25C: number;
  readonly lowestDensityAt25C: number;
};

/** How well "half flat" names a state of charge, standard: the same judgement as in the table of lib/project/ready-by.ts. */
const wordUncertainty = 0.06;
/** A hand hydrometer of a scale not stated, standard, kg/l: half a step of 0.01 and the scales' spread. Our judgement. */
const hydrometerUncertainty = 0.005;
/** A hand voltmeter and what is left of the surface charge, standard, V a cell: 0.03 V on a 12 V battery. Our judgement. */
const voltmeterUncertaintyV = 0.005;

/** Acid weaker than this is no acid of a battery, and stronger than this none either, kg/l. Common practice. */
const densityRange = { low: 1.0, high: 1.35 } as const;

/** Cells in series of a lead-acid battery: 2 V each. */
export const cellsOf = (voltageV: number): number => Math.round(voltageV / 2);

/** The state of charge with which the forecast begins; a complaint where a reading is none of such a battery. */
export function startOfCharge(question: Question, { formats, words }: FindSpeech): StartOfCharge | Complaint {
  const density = densitiesByKind[question.kind];
  const word = flatnesses.find(({ id }) => id === question.flat);
  if (word !== undefined) return startAt(word.stateOfCharge, Math.min(wordUncertainty, word.stateOfCharge / 2), density);
  if (question.flat === "density") {
    if (!(question.densityAt25C >= densityRange.low && question.densityAt25C <= densityRange.high))
      return {
        field: questionFields.densityAt25C,
        words: words.complaints.density,
      };
    const { share, standardUncertainty } = startShareFromDensity(question.densityAt25C, hydrometerUncertainty, density);
    return {
      share,
      standardUncertainty,
      densityAt25C: question.densityAt25C,
      lowestDensityAt25C: question.densityAt25C - 2 * hydrometerUncertainty,
    };
  }
  const cells = cellsOf(question.voltageV);
  const { share, standardUncertainty } = startShareFromRestVoltage(question.restV, voltmeterUncertaintyV * cells, cells, density);
  if (Number.isNaN(share) || Number.isNaN(standardUncertainty))
    return {
      field: questionFields.restV,
      words: words.complaints.restVoltage(cells, formats.formatNumber(1.9 * cells, 1)),
    };
  return startAt(share, standardUncertainty, density);
}

export const isComplaint = (start: StartOfCharge | Complaint): start is Complaint => "field" in start;

function startAt(share: number, standardUncertainty: number, density: { readonly full: number; readonly empty: number }): StartOfCharge {
  const at = (held: number): number => densityAfterCharge(1, density.empty, held * chargeForDensityRise(1, density.empty, density.full));
  return {
    share,
    standardUncertainty,
    densityAt25C: at(share),
    lowestDensityAt25C: at(Math.max(0, share - 2 * standardUncertainty)),
  };
}
