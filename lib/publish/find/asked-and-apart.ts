/** Which modes the question is put to, and which stand apart, each with its reason. None is dropped. */
import { type FindMode, familyOf } from "./find-data.ts";
import { kindLabel, type Question } from "./question.ts";

export type Apart = { readonly mode: FindMode; readonly because: string };
export type AskedMode = FindMode & { readonly behaviour: NonNullable<FindMode["behaviour"]> };

/** Splits all modes; every mode is in one of the two lists, in its order. */
export function askedAndApart(question: Question, modes: readonly FindMode[]): { asked: AskedMode[]; apart: Apart[] } {
  const asked: AskedMode[] = [];
  const apart: Apart[] = [];
  for (const mode of modes) {
    const because = reasonApart(question, mode);
    if (because !== undefined) apart.push({ mode, because });
    else if (mode.behaviour !== null) asked.push({ ...mode, behaviour: mode.behaviour });
  }
  return { asked, apart };
}

function reasonApart({ voltageV, kind }: Question, { behaviour, nominalVoltageV, families, kindWords }: FindMode): string | undefined {
  if (behaviour === null || nominalVoltageV === null) return "no recording shows what this mode does, so nothing can be projected";
  if (nominalVoltageV !== voltageV) return `it was tested on ${nominalVoltageV} V batteries, and yours has ${voltageV} V`;
  if (families.includes(familyOf(kind))) return undefined;
  const named = kindWords === null ? "the maker names no kinds of battery" : `the maker's words are ${kindWords}`;
  return `not for ${kindLabel(kind)} as far as is known: ${named}, and nobody tested it on a ${familyOf(kind)} one`;
}
