/** A part of the site that is made from the results alone, and written in one step. */
import type { Step } from "./keep/maker.ts";
import type { ResultsFolder } from "./results-folder.ts";

export type SitePart<Value = void> = (results: ResultsFolder, step: Step) => Value;
