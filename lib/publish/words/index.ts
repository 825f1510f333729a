/** The words of the pages, by language. English is the source: the other tables have its type, so that none misses a message or keeps a dead one. */
import type { Language } from "../../nouns/site.ts";
import * as de from "./de/index.ts";
import * as en from "./en/index.ts";
import * as pl from "./pl/index.ts";

export type Words = typeof en;

const tables: Readonly<Record<Language, Words>> = { en, pl, de };

export const wordsIn = (language: Language): Words => tables[language];
