/** Every finding, in the order in which it is told. A test lists the folder and names any file that is left out here. */
import type { TestContext } from "../../measure/test-context.ts";
import type { Finding } from "../../nouns/finding.ts";
import type { FindingDefinition } from "../define-finding.ts";
import { cellSpread } from "./cell-spread.ts";
import { crossExamination } from "./cross-examination.ts";
import { floatWindow } from "./float-window.ts";
import { frost } from "./frost.ts";
import { lettingGo } from "./letting-go.ts";
import { recordingEndings } from "./recording-endings.ts";
import { targetDensity } from "./target-density.ts";
import { temperature } from "./temperature.ts";
import { unrecordedCharge } from "./unrecorded-charge.ts";
import { water } from "./water.ts";

export const findings: readonly FindingDefinition[] = [
  targetDensity,
  crossExamination,
  recordingEndings,
  unrecordedCharge,
  floatWindow,
  lettingGo,
  water,
  cellSpread,
  temperature,
  frost,
];

/** Judges every subject that arises in a test. */
export function judgeFindings(context: TestContext): Finding[] {
  return findings.flatMap((definition) => {
    const judged = definition.judge(context);
    return judged === undefined ? [] : [{ id: definition.id, subject: definition.subject, ...judged }];
  });
}
