/** Who is done first on the reference battery, by draws in which all met the same battery. */
import { type Contender, pairContenders } from "../../project/compare.ts";
import type { ComparedMode } from "./compared.ts";
import type { Statement } from "./differences.ts";

export type Finisher = {
  /** What the statements call it. */
  readonly name: string;
  readonly reference: ComparedMode["reference"];
};

/**
 * Holds hours to 95 % against each other, draw by draw; "never" loses against any hour, and equal draws count half.
 * @param finishers one a charger, in any order
 * @returns a statement a pair, then who is not comparable and why; [] for no chargers
 * Source of the rule for a tie: lib/project/compare.ts.
 */
export function finishingOrder(finishers: readonly Finisher[]): Statement[] {
  const contenders = finishers.flatMap(({ name, reference }): Contender[] =>
    "because" in reference
      ? []
      : [
          {
            id: name,
            draws: reference.drawsH.map((hours) => hours ?? Number.POSITIVE_INFINITY),
            basis: "projected",
            batteryKind: reference.words,
            target: "95 %",
          },
        ],
  );
  const { pairs, notComparable } = pairContenders(contenders, "less");
  const count = contenders[0]?.draws.length ?? 0;
  const absent = finishers.flatMap(({ name, reference }) => ("because" in reference ? [{ id: name, because: reference.because }] : []));
  return [
    ...pairs.map(({ a, b, aBeatsB, isTie }): Statement => {
      const [first, second, share] = aBeatsB >= 0.5 ? [a, b, aBeatsB] : [b, a, 1 - aBeatsB];
      // Halves are all that can come; the share's division leaves a crumb beside them.
      const won = Math.round(2 * share * count) / 2;
      const draws = `${first} is done before ${second} in ${won} of ${count} draws`;
      return isTie ? { sign: "≈", words: `${draws}: cannot be told apart` } : { sign: "≠", words: draws };
    }),
    ...[...notComparable, ...absent].map(
      ({ id, because }): Statement => ({ sign: "∦", words: `${id} is not comparable because ${because}` }),
    ),
  ];
}
