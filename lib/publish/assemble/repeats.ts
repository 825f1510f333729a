/** What a mode did again: the same quantity in every recording of its tests, and how far it scatters. */
import { type Spread, spreadBetween, spreadWithin } from "../../measure/repeatability.ts";
import type { Figure } from "../../nouns/figure.ts";
import type { Repeats, TestResult } from "../results.ts";

/** Quantities that belong to the charger, whatever battery is on it. */
const quantities = ["charger-limited-current", "limit-voltage", "float-voltage"] as const;

/** A spread from fewer values than this is known within a factor of two at best (its chi-square interval). */
const fewValues = 8;

/** How the two spreads are explained, for their method pages. */
export const spreadMethods = [
  {
    id: "spread-within-tests",
    label: "Spread from connection to connection",
    explain:
      "The standard deviation of what several recordings of one test show: same charger, mode, battery and instruments. Errors of the recorder that are the same each time are not in it. From few recordings it is itself hardly known, which its interval shows.",
    formula: "s² = Σ Σ (x − mean of the test)² / Σ (n − 1); interval from chi-square",
    source: "ISO 5725-2:1994, repeatability standard deviation (from memory).",
    checkedBy: ["JCGM 100:2008, 4.4.3", "Chi-square quantiles of a handbook table"],
  },
  {
    id: "spread-between-tests",
    label: "Spread from test to test",
    explain:
      "The standard deviation of the means of several tests of one mode, with another battery, season or recorder in it where they differed.",
    formula: "s² = Σ (mean of a test − mean of all)² / (tests − 1); interval from chi-square",
    source: "ISO 5725-2:1994 (from memory).",
    checkedBy: ["JCGM 100:2008, 4.4.3", "Chi-square quantiles of a handbook table"],
  },
] as const;

/**
 * The repeats of a mode, a quantity at a time; quantities that no recording shows are left out.
 *
 * @param modeId  as in the charger's record
 * @param tests   the mode's tests
 */
export function assembleRepeats(modeId: string, tests: readonly TestResult[]): Repeats[] {
  return quantities.flatMap((id) => {
    const runs = tests.flatMap((test) =>
      test.recordings.flatMap((recording) => {
        const figure = recording.figures.find((candidate) => candidate.id === id);
        return figure === undefined || figure.value === null
          ? []
          : [{ test: test.id, recording: recording.id, figure, value: figure.value }];
      }),
    );
    const first = runs[0]?.figure;
    if (first === undefined) return [];
    const groups = tests.map((test) => runs.filter((run) => run.test === test.id).map((run) => run.value));
    const evidence = runs.flatMap(({ figure }) => figure.evidence);
    const within = { name: "spread-within-tests", spread: spreadWithin(groups), few: "no test of this mode recorded it twice" };
    const between = { name: "spread-between-tests", spread: spreadBetween(groups), few: "only one test of this mode recorded it" };
    return [
      {
        id,
        label: first.label,
        unit: first.unit,
        runs: runs.map(({ test, recording, figure, value }) => ({
          test,
          recording,
          figure: `${test}/${figure.of}#${figure.id}`,
          value,
          low: figure.low,
          high: figure.high,
        })),
        figures: [within, between].map(({ name, spread, few }) => spreadFigure(name, modeId, first, spread, few, evidence)),
      },
    ];
  });
}

function spreadFigure(
  method: string,
  modeId: string,
  of: Figure,
  spread: Spread | undefined,
  few: string,
  evidence: Figure["evidence"],
): Figure {
  const told = spreadMethods.find(({ id }) => id === method);
  const common = {
    id: method,
    of: `mode/${modeId}/${of.id}`,
    label: `${of.label}: ${told?.label.toLowerCase() ?? method}`,
    unit: of.unit,
    basis: "measured" as const,
    method: `${method}/1`,
    evidence: [...evidence],
  };
  if (spread === undefined)
    return { ...common, value: null, low: null, high: null, absent: { kind: "not measured", why: few }, doubts: [] };
  const { value, low, high, count } = spread;
  const doubts = count < fewValues ? [`from ${count} values, so hardly known itself`] : [];
  return { ...common, value, low, high, absent: null, doubts };
}
