/**
 * Holds the demo's results against the generator's truth: charge, energy, stages and endings of every recording.
 *
 *   npx tsx tests/generator/compare.ts            prints the table
 *   npx tsx tests/generator/compare.ts --write    writes it into docs/demo-truth.md
 */
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import type { RecordingResult } from "../../lib/publish/results.ts";
import { run } from "../../lib/run.ts";
import { noForecast } from "../no-forecast.ts";

const here = path.dirname(fileURLToPath(import.meta.url));
const project = path.join(here, "../..");

type TruthStage = { readonly kind: string; readonly limitA?: number; readonly startS: number; readonly endS: number };
type TruthRecording = {
  readonly file: string;
  readonly shownChargeAh: number;
  readonly shownEnergyWh: number;
  readonly spanS: number;
  readonly stages: readonly TruthStage[];
  readonly endedBy: string;
  readonly rowsEndedBy: string;
  readonly clockBackS: number;
};

export type Comparison = {
  readonly test: string;
  readonly file: string;
  readonly chargeErrorShare: number;
  readonly energyErrorShare: number;
  /** Truth's own values, to tell a share of next to nothing. */
  readonly chargeAh: number;
  readonly stages: readonly StageComparison[];
  readonly endedBy: { readonly truth: string; readonly found: string };
};

export type StageComparison = {
  readonly kind: string;
  readonly hours: number;
  readonly found: string;
  readonly startErrorS: number;
  readonly endErrorS: number;
  /** Within one minute, one sample or 1 % of the stage at both ends, and of the right kind. */
  readonly ok: boolean;
};

/** Stages shorter than this many samples cannot be seen in a log and are not asked for. */
const leastSamples = 5;

/** Compares every recording of the demo. */
export async function compareDemo(): Promise<Comparison[]> {
  const { results } = await run(project, { forecast: noForecast });
  if (results === undefined) throw new Error("the demo has no results");
  const truths = readdirSync(path.join(here, "truth")).filter((name) => name.endsWith(".json"));
  return truths.flatMap((name) => {
    const truth = JSON.parse(readFileSync(path.join(here, "truth", name), "utf8")) as { test: string; recordings: TruthRecording[] };
    const test = results.tests.find((candidate) => candidate.id === truth.test);
    if (test === undefined) throw new Error(`the demo publishes no test ${truth.test}`);
    return truth.recordings.map((recording) => {
      const found = test.recordings.find((candidate) => candidate.id === recording.file);
      if (found === undefined) throw new Error(`${truth.test} publishes no recording ${recording.file}`);
      return compareRecording(truth.test, recording, found);
    });
  });
}

function compareRecording(test: string, truth: TruthRecording, found: RecordingResult): Comparison {
  const figure = (id: string): number => found.figures.find((candidate) => candidate.id === id)?.value ?? Number.NaN;
  const intervalS = figure("sample-interval");
  const stages = withRounds(mergeSame(withDetails(truth.stages)));
  return {
    test,
    file: truth.file,
    chargeAh: truth.shownChargeAh,
    chargeErrorShare: figure("charge-recorded") / truth.shownChargeAh - 1,
    energyErrorShare: figure("energy-recorded") / truth.shownEnergyWh - 1,
    stages: stages
      .filter((stage) => stage.endS - stage.startS >= Math.max(120, leastSamples * intervalS))
      .map((stage) => compareStage(stage, found, intervalS, truth.clockBackS)),
    // A charger that holds by switching off and on has not ended; whoever stopped the rows ended the recording.
    endedBy: { truth: stages.at(-1)?.kind === "on-off-holding" ? truth.rowsEndedBy : truth.endedBy, found: found.ending.by },
  };
}

/** The truth tells a soft start and a throttled stretch as a constant current with a lower limit than the one that follows. */
function withDetails(stages: readonly TruthStage[]): TruthStage[] {
  return stages.map((stage, index) => {
    const next = stages[index + 1];
    const isLower = stage.limitA !== undefined && next?.limitA !== undefined && stage.limitA < next.limitA;
    return isLower ? { ...stage, kind: index === 0 ? "soft-start" : "throttled" } : stage;
  });
}

/** Three or more rounds of pause and charge are one way of holding, here as in the tool; the truth tells each of them. */
function withRounds(stages: readonly TruthStage[]): TruthStage[] {
  const isPause = (stage: TruthStage | undefined): boolean => stage?.kind === "rest" || stage?.kind === "interrupted";
  const first = stages.findIndex((stage) => isPause(stage));
  const rounds = stages.filter((stage, index) => index >= first && isPause(stage) && stages[index + 1] !== undefined).length;
  const start = stages[first];
  const end = stages.at(-1);
  if (start === undefined || end === undefined || rounds < 3) return [...stages];
  return [...stages.slice(0, first), { kind: "on-off-holding", startS: start.startS, endS: end.endS }];
}

/** Stretches of one kind, one after the other, are one stage here. */
function mergeSame(stages: readonly TruthStage[]): TruthStage[] {
  const merged: TruthStage[] = [];
  for (const stage of stages) {
    const last = merged.at(-1);
    if (last !== undefined && last.kind === stage.kind) merged[merged.length - 1] = { ...last, endS: stage.endS };
    else merged.push(stage);
  }
  return merged;
}

function compareStage(truth: TruthStage, recording: RecordingResult, intervalS: number, clockBackS: number): StageComparison {
  const stages = mergeSame(recording.stages) as TruthStage[];
  const overlap = (stage: TruthStage): number => Math.min(stage.endS, truth.endS) - Math.max(stage.startS, truth.startS);
  const best = [...stages].sort((a, b) => overlap(b) - overlap(a))[0];
  const lengthS = truth.endS - truth.startS;
  // A clock that was set back tells earlier times from then on; that much of the log's own time cannot be known.
  const allowedS = Math.max(60, 2 * Math.min(intervalS, 60), 0.01 * lengthS) + clockBackS;
  const startErrorS = best === undefined ? Number.NaN : best.startS - truth.startS;
  const endErrorS = best === undefined ? Number.NaN : best.endS - truth.endS;
  return {
    kind: truth.kind,
    hours: lengthS / 3600,
    found: best?.kind ?? "none",
    startErrorS,
    endErrorS,
    ok: best?.kind === truth.kind && Math.abs(startErrorS) <= allowedS && Math.abs(endErrorS) <= allowedS,
  };
}

/** The comparison as a page of docs. */
export function tellComparison(comparisons: readonly Comparison[]): string {
  const percent = (share: number): string => `${share >= 0 ? "+" : "−"}${Math.abs(100 * share).toFixed(3)} %`;
  const stages = comparisons.flatMap((comparison) => comparison.stages);
  const rows = comparisons.map(
    (c) =>
      `| ${c.test} | ${c.file} | ${c.chargeAh.toFixed(2)} | ${percent(c.chargeErrorShare)} | ${percent(c.energyErrorShare)} | ${c.stages.filter((s) => s.ok).length} of ${c.stages.length} | ${c.endedBy.truth} | ${c.endedBy.found} |`,
  );
  const misses = comparisons.flatMap((c) =>
    c.stages
      .filter((stage) => !stage.ok)
      .map(
        (s) =>
          `| ${c.test} | ${c.file} | ${s.kind} | ${s.hours.toFixed(2)} | ${s.found} | ${s.startErrorS.toFixed(0)} | ${s.endErrorS.toFixed(0)} |`,
      ),
  );
  return [
    "# The demo against its truth",
    "",
    "Made by `npm run demo:truth`. Each recording's charge and energy (gaps left out), its stages and its ending, against what the generator",
    "put in. Recorders add noise, steps and an error of calibration within their data sheet; the truth is what flowed at the posts.",
    "",
    "| test | recording | Ah in truth | charge | energy | stages right | ended by | found |",
    "|---|---|---|---|---|---|---|---|",
    ...rows,
    "",
    `Stages of at least two minutes and five samples: ${stages.filter((stage) => stage.ok).length} of ${stages.length} have the right kind and both ends within one minute, two samples or 1 % of the stage.`,
    "",
    ...(misses.length === 0
      ? []
      : [
          "## Stages that miss",
          "",
          "| test | recording | stage | h | read as | start off by s | end off by s |",
          "|---|---|---|---|---|---|---|",
          ...misses,
          "",
        ]),
  ].join("\n");
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const text = tellComparison(await compareDemo());
  if (process.argv.includes("--write")) writeFileSync(path.join(project, "docs/demo-truth.md"), text);
  process.stdout.write(text);
}
