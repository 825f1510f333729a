import type { Instrument } from "../nouns/instrument.ts";
import type { Place, Problem } from "../nouns/problem.ts";
import type { Samples } from "../nouns/samples.ts";
import { present, round } from "./log/facts.ts";

/** Fewer rows, or fewer different values, may look coarse by chance. */
const fewestRows = 100;
const fewestValues = 8;
/** The first rows of a log mostly show its steps. */
const rowsLookedAtFirst = 20_000;
/** A step of one and a half stated resolutions cannot come from it. */
const coarserThan = 1.5;

/**
 * A recorder's file shows steps as fine as its record states; where every value is a multiple of a coarser one, uncertainty is understated.
 *
 * @param measuresPlace  where the recorder's record states how well it measures
 * @returns a doubt for each quantity whose file is coarser than stated; none for short logs
 */
export function checkLogResolution(
  samples: Samples,
  measures: Instrument["measures"],
  file: string,
  testId: string,
  measuresPlace: Place,
): Problem[] {
  return (
    [
      ["voltage", "V", samples.voltagesV],
      ["current", "A", samples.currentsA],
    ] as const
  ).flatMap(([quantity, unit, values]) => {
    const stated = measures[quantity]?.resolution;
    if (stated === undefined || showsStep(values.subarray(0, rowsLookedAtFirst), stated)) return [];
    const step = stepOf(values, stated);
    if (step === undefined || step < coarserThan * stated) return [];
    return [
      {
        id: "log-coarse",
        level: "doubt" as const,
        place: { file, line: samples.lines[0] ?? 1, column: 1 },
        found: `no step of ${quantity} below ${round(step)} ${unit}`,
        expected: `steps of ${stated} ${unit}, as the recorder's record states`,
        mend: `state what the file shows: measures: ${quantity}: resolution: ${round(step)}`,
        notes: [`${measuresPlace.file}:${measuresPlace.line ?? 1} states how well this recorder measures`],
        test: testId,
      },
    ];
  });
}

/** Whether rows show the stated step already; then no further row can take it back, and a long log need not be put in order. */
function showsStep(values: Float64Array, stated: number): boolean {
  const step = stepOf(values, stated);
  return step !== undefined && step < coarserThan * stated;
}

/** The smallest difference between two different values of a column; undefined where there are too few to tell. */
function stepOf(values: Float64Array, stated: number): number | undefined {
  const sorted = present(values).slice().sort();
  if (sorted.length < fewestRows) return undefined;
  let step = Number.POSITIVE_INFINITY;
  let different = 1;
  for (let i = 1; i < sorted.length; i++) {
    const difference = (sorted[i] ?? 0) - (sorted[i - 1] ?? 0);
    // Values are multiples of a decimal fraction that doubles do not hold exactly.
    if (difference < stated / 1000) continue;
    different++;
    step = Math.min(step, difference);
  }
  return different < fewestValues ? undefined : step;
}
