/** The language that a component speaks: the words of marks, and what the results say. */
import type { ComponentChildren } from "preact";
import type { Absences } from "../../units/absences.ts";
import { sentence } from "./sentence.ts";

export type Speech = {
  absence(kind: keyof Absences): string;
  /** What the results say, in English, said in this language; undefined where nobody has translated it. */
  say(text: string): string | undefined;
};

/**
 * Who speaks now. A page is rendered in one go, from its provider down, so one place to look is enough; a context with its hooks would
 * weigh on every script that draws a mark.
 */
let spoken: Speech | null = null;

/** Everything below it, and rendered with it, speaks so. */
export function SpeechProvider({ value, children }: { value: Speech; children: ComponentChildren }) {
  spoken = value;
  return children;
}

/** Throws outside of a page, which would be our own mistake. */
export function useSpeech(): Speech {
  if (spoken === null) throw new Error("outside of a page");
  return spoken;
}

type SaidProps = {
  /** A label, a statement or a clause of the results. */
  readonly text: string;
  /** Shown with a capital and a full stop. */
  readonly asSentence?: boolean;
};

/** What the results say, in the page's language; in English, and marked so, where it has no translation. */
export function Said({ text, asSentence = false }: SaidProps) {
  const told = useSpeech().say(text);
  const shown = asSentence ? sentence(told ?? text) : (told ?? text);
  return told === undefined && text !== "" ? <span lang="en">{shown}</span> : shown;
}

/** Words ready to show, and their language where it is not the page's. */
export type Told = { readonly words: string; readonly lang?: "en" };

/** The same for a page that is not rendered yet: what Said would mark is told as English. */
export const tell = ({ say }: Pick<Speech, "say">, text: string): Told => {
  const words = say(text);
  return words === undefined ? { words: text, lang: "en" } : { words };
};

/** The same as plain text, for attributes, which cannot mark a language. */
export const said = ({ say }: Pick<Speech, "say">, text: string): string => say(text) ?? text;
