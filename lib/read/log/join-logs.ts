/** Voltage in one file and current in another, each with its own clock: set side by side on the first file's rows. */
import type { Problem } from "../../nouns/problem.ts";
import type { Samples } from "../../nouns/samples.ts";
import type { Log } from "../log.ts";
import { valuesAt } from "./pair-columns.ts";

export type JoinedFile = { readonly file: string; readonly log: Log };

/**
 * Joins two logs.
 *
 * The second's values are set on the first's rows, on a straight line between the second's neighbouring rows and never further apart than
 * one and a half of its intervals. Where both clocks are placed in time they are taken at their word, less the stated offset; where one
 * only counts, both are taken to begin together, which is told.
 *
 * @param first        its rows, lines and clock are those of the result
 * @param second       has the quantity that the first lacks
 * @param clockAheadS  how far the second's clock runs ahead of the first's, s
 * @returns the joined log, or a problem where the two do not make one of voltage and current, or do not overlap
 */
export function joinLogs(first: JoinedFile, second: JoinedFile, clockAheadS: number): { value: Log | undefined; problems: Problem[] } {
  const [a, b] = [first.log.samples, second.log.samples];
  const lacksVoltage = !a.hasVoltage && b.hasVoltage;
  const lacksCurrent = !a.hasCurrent && b.hasCurrent;
  if (lacksVoltage === lacksCurrent)
    return refuse(
      second.file,
      describe(b),
      `a log of ${a.hasVoltage ? "current" : "voltage"} beside ${first.file}, which has ${describe(a)}`,
      "name the file of the other quantity under with:, or take with: out",
    );
  const isPlaced = a.startMs !== undefined && b.startMs !== undefined;
  const offsetS = isPlaced ? ((b.startMs ?? 0) - (a.startMs ?? 0)) / 1000 - clockAheadS : -clockAheadS;
  const timesS = b.elapsedS.map((elapsedS) => elapsedS + offsetS);
  const { values, intervalS } = valuesAt({ timesS, values: lacksVoltage ? b.voltagesV : b.currentsA }, a.elapsedS);
  const without = values.reduce((count, value) => count + (Number.isNaN(value) ? 1 : 0), 0);
  if (without === values.length)
    return refuse(
      second.file,
      `rows from ${offsetS} s to ${offsetS + (b.elapsedS.at(-1) ?? 0)} s on the clock of ${first.file}`,
      `rows that overlap with its ${a.elapsedS.at(-1) ?? 0} s`,
      "check both clocks; say how far the second runs ahead: withClockAheadS: …",
    );
  const quantity = lacksVoltage ? "voltage" : "current";
  const samples: Samples = {
    ...a,
    hasVoltage: true,
    hasCurrent: true,
    ...(lacksVoltage ? { voltagesV: values } : { currentsA: values }),
    ...(a.temperaturesC.length === 0 && b.temperaturesC.length > 0
      ? { temperaturesC: valuesAt({ timesS, values: b.temperaturesC }, a.elapsedS).values }
      : {}),
  };
  return {
    value: {
      samples,
      counts: first.log.counts,
      readAs: [
        ...first.log.readAs,
        ...second.log.readAs.map((choice) => ({ ...choice, what: `${choice.what}, second file` })),
        {
          what: "second file",
          value: `${quantity} from ${second.file}, whose first row stands ${Number(offsetS.toPrecision(6))} s after the first file's${isPlaced ? "" : ", both taken to begin together"}${clockAheadS === 0 ? "" : `, its clock set back by ${clockAheadS} s as stated`}; between its rows on a straight line, where these are no more than one and a half times ${Number(intervalS.toPrecision(4))} s apart; ${without} rows have none`,
          from: "test record",
        },
      ],
      sampleRead: [first.log.sampleRead, second.log.sampleRead].filter((text) => text !== undefined).join("; second file, "),
    },
    problems: [],
  };
}

function describe({ hasVoltage, hasCurrent }: Samples): string {
  return (
    [hasVoltage ? "voltage" : undefined, hasCurrent ? "current" : undefined].filter((name) => name !== undefined).join(" and ") || "neither"
  );
}

function refuse(file: string, found: string, expected: string, mend: string): { value: undefined; problems: Problem[] } {
  return { value: undefined, problems: [{ id: "log-with", level: "error", place: { file }, found, expected, mend }] };
}
