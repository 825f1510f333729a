/** The drawings of a test's page, made before the page is, since drawing is asynchronous and components are not. */

import type { Language } from "../../nouns/site.ts";
import { addressPart } from "../links.ts";
import type { RecordingResult, TestResult } from "../results.ts";
import { chartSpeechIn } from "./chart-speech.ts";
import { densitySentence, densitySpec } from "./density-over-time.ts";
import { profileSentence, profileSpec } from "./profile.ts";
import { renderChart } from "./render.ts";
import { witnessesSentence, witnessesSpec } from "./witnesses.ts";

/** A drawing with the sentence that stands for it. */
export type Chart = { readonly svg: string; readonly sentence: string };

export type TestCharts = {
  /** undefined where no density was read. */
  readonly density: Chart | undefined;
  /** undefined where the witnesses could not be examined. */
  readonly witnesses: Chart | undefined;
  /** By recording id; a recording without samples has none. */
  readonly profiles: ReadonlyMap<string, Chart>;
};

/** Draws every chart of a test, one after the other. */
export async function drawTestCharts(test: TestResult, language: Language): Promise<TestCharts> {
  const speech = chartSpeechIn(language);
  const density = densitySpec(test, speech);
  const witnesses = witnessesSpec(test.examination, speech);
  const profiles = new Map<string, Chart>();
  for (const recording of test.recordings) {
    const spec = profileSpec(recording, speech);
    if (spec === undefined) continue;
    const svg = await renderChart(spec, `profile-${addressPart(recording.id)}`, speech.decimalMark);
    profiles.set(recording.id, { svg, sentence: profileSentence(recording, speech) });
  }
  return {
    density: density && { svg: await renderChart(density, "density", speech.decimalMark), sentence: densitySentence(test, speech) },
    witnesses: witnesses && {
      svg: await renderChart(witnesses, "witnesses", speech.decimalMark),
      sentence: witnessesSentence(test.examination, speech),
    },
    profiles,
  };
}

/** A recording with its drawing. */
export type DrawnProfile = { readonly recording: RecordingResult; readonly chart: Chart };

/** The profile that stands for each test on its charger's page, by test id. */
export type ChargerCharts = ReadonlyMap<string, DrawnProfile>;

const spanOf = (recording: RecordingResult) => recording.profile.elapsedH.at(-1) ?? 0;

/** Draws the longest recording of each test; a test without samples has none. */
export async function drawChargerCharts(tests: readonly TestResult[], language: Language): Promise<ChargerCharts> {
  const speech = chartSpeechIn(language);
  const charts = new Map<string, DrawnProfile>();
  for (const test of tests) {
    const longest = [...test.recordings].sort((a, b) => spanOf(b) - spanOf(a))[0];
    const spec = longest && profileSpec(longest, speech);
    if (longest === undefined || spec === undefined) continue;
    const svg = await renderChart(spec, `profile-${addressPart(test.id)}`, speech.decimalMark);
    charts.set(test.id, { recording: longest, chart: { svg, sentence: profileSentence(longest, speech) } });
  }
  return charts;
}
