/** Who is likelier to be in time, and who cannot be told apart. */
import { type Contender, shareWon } from "../../project/compare.ts";

/** What a ranking needs of an answer. */
export type Ranked = { readonly name: string; readonly inTime: readonly boolean[] };

/** Two-sided 95 % point of the normal distribution. */
const normal95 = 1.96;

/**
 * Whether the common draws can tell that one charger is likelier to be in time than another: only draws in which one of them is in time and
 * the other is not speak, and they must do so by more than chance would (McNemar 1947, from memory). Of 64 draws four that all speak for one
 * are enough, three are not. Never for no draws.
 */
export function canBeToldApart(a: Ranked, b: Ranked): boolean {
  const speaking = a.inTime.filter((isInTime, k) => isInTime !== b.inTime[k]).length;
  const ahead = (2 * shareWon(contender(a), contender(b), "more") - 1) * a.inTime.length;
  return Math.abs(ahead) > normal95 * Math.sqrt(speaking);
}

/**
 * Groups from the likeliest downwards.
 * @returns groups, each in the order of names: all who cannot be told apart from the group's likeliest, and whoever stands between them.
 *   Every answer is in one group; no groups for no answers.
 */
export function groupsOfTies<T extends Ranked>(answers: readonly T[]): T[][] {
  const count = ({ inTime }: Ranked): number => inTime.filter(Boolean).length;
  const byName = (a: Ranked, b: Ranked): number => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0);
  let rest = [...answers].sort((a, b) => count(b) - count(a) || byName(a, b));
  const groups: T[][] = [];
  for (let best = rest[0]; best !== undefined; best = rest[0]) {
    const likeliest = best;
    const end = rest.findLastIndex((answer) => !canBeToldApart(likeliest, answer)) + 1;
    groups.push(rest.slice(0, end).sort(byName));
    rest = rest.slice(end);
  }
  return groups;
}

function contender({ name, inTime }: Ranked): Contender {
  return { id: name, draws: inTime.map(Number), basis: "projected", batteryKind: "", target: "" };
}
