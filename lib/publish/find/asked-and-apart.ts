/** Which modes the question is put to, and which stand apart, each with its reason. None is dropped. */
import { type FindMode, familyOf } from "./find-data.ts";
import type { FindSpeech } from "./find-speech.ts";
import type { Question } from "./question.ts";
import { statedWords } from "./stated-words.ts";

export type Apart = { readonly mode: FindMode; readonly because: string };
export type AskedMode = FindMode & { readonly behaviour: NonNullable<FindMode["behaviour"]> };

/** Splits all modes; every mode is in one of the two lists, in its order. */
export function askedAndApart(question: Question, modes: readonly FindMode[], speech: FindSpeech): { asked: AskedMode[]; apart: Apart[] } {
  const asked: AskedMode[] = [];
  const apart: Apart[] = [];
  for (const mode of modes) {
    const because = reasonApart(question, mode, speech);
    if (because !== undefined) apart.push({ mode, because });
    else if (mode.behaviour !== null) asked.push({ ...mode, behaviour: mode.behaviour });
  }
  return { asked, apart };
}

function reasonApart(
  { voltageV, kind }: Question,
  { behaviour, nominalVoltageV, families, kindWords }: FindMode,
  speech: FindSpeech,
): string | undefined {
  const { apart, kindNames } = speech.words;
  if (behaviour === null || nominalVoltageV === null) return apart.notRecorded;
  if (nominalVoltageV !== voltageV) return apart.voltage(nominalVoltageV, voltageV);
  if (families.includes(familyOf(kind))) return undefined;
  return apart.kind(kindNames[kind], kindWords === null ? null : statedWords(kindWords, speech), familyOf(kind));
}
