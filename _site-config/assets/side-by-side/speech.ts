/** This script speaks English, on every page: its words in a second language would make it heavier than a phone should carry. */
import type { Speech } from "../../../lib/publish/pages/speech.tsx";
import { figureText } from "../../../lib/units/format.ts";

const asItIs = <Word extends string>(word: Word): Word => word;

export const speech: Speech = { formats: { figureText }, absence: asItIs, basis: asItIs, say: asItIs };
