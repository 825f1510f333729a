/** The chapters of the phrase book, in the order of what a reader meets. */
import { claims } from "./book/claims.ts";
import { endingWords } from "./book/endings.ts";
import { examination } from "./book/examination.ts";
import { figures } from "./book/figures.ts";
import { findings } from "./book/findings.ts";
import { forecast } from "./book/forecast.ts";
import { labels } from "./book/labels.ts";
import { logs } from "./book/logs.ts";
import { methodExplanations } from "./book/method-explanations.ts";
import { methodSources } from "./book/method-sources.ts";
import { problems } from "./book/problems.ts";
import { records } from "./book/records.ts";
import { rules } from "./book/rules.ts";
import { settling } from "./book/settling.ts";
import { shared } from "./book/shared.ts";
import { stages } from "./book/stages.ts";
import { strip } from "./book/strip.ts";
import { target } from "./book/target.ts";
import type { Chapter } from "./pattern.ts";

export const chapters: readonly Chapter[] = [
  findings,
  target,
  claims,
  settling,
  examination,
  endingWords,
  stages,
  figures,
  forecast,
  strip,
  problems,
  logs,
  rules,
  records,
  labels,
  methodExplanations,
  methodSources,
  shared,
];
