/** The drawings of a test's page, made before the page is, since drawing is asynchronous and components are not. */
import { addressPart } from "../links.ts";
import type { RecordingResult, TestResult } from "../results.ts";
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
export async function drawTestCharts(test: TestResult): Promise<TestCharts> {
  const density = densitySpec(test);
  const witnesses = witnessesSpec(test.examination);
  const profiles = new Map<string, Chart>();
  for (const recording of test.recordings) {
    const spec = profileSpec(recording);
    if (spec === undefined) continue;
    const svg = await renderChart(spec, `profile-${addressPart(recording.id)}`);
    profiles.set(recording.id, { svg, sentence: profileSentence(recording) });
  }
  return {
    density: density && { svg: await renderChart(density, "density"), sentence: densitySentence(test) },
    witnesses: witnesses && { svg: await renderChart(witnesses, "witnesses"), sentence: witnessesSentence(test.examination) },
    profiles,
  };
}

/** A recording with its drawing. */
export type DrawnProfile = { readonly recording: RecordingResult; readonly chart: Chart };

/** The profile that stands for each test on its charger's page, by test id. */
export type ChargerCharts = ReadonlyMap<string, DrawnProfile>;

const spanOf = (recording: RecordingResult) => recording.profile.elapsedH.at(-1) ?? 0;

/** Draws the longest recording of each test; a test without samples has none. */
export async function drawChargerCharts(tests: readonly TestResult[]): Promise<ChargerCharts> {
  const charts = new Map<string, DrawnProfile>();
  for (const test of tests) {
    const longest = [...test.recordings].sort((a, b) => spanOf(b) - spanOf(a))[0];
    const spec = longest && profileSpec(longest);
    if (longest === undefined || spec === undefined) continue;
    const svg = await renderChart(spec, `profile-${addressPart(test.id)}`);
    charts.set(test.id, { recording: longest, chart: { svg, sentence: profileSentence(longest) } });
  }
  return charts;
}
