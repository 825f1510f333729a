/** Which of several chargers is better at one figure, and which cannot be told apart. */

/** One charger's figure as draws; draw k of every charger uses the same chance (common random numbers). */
export type Contender = {
  readonly id: string;
  /** Draws of the figure; Infinity is "never". */
  readonly draws: readonly number[];
  /** What the figure was taken on: contenders with different ones are not comparable. */
  readonly basis: "measured" | "projected";
  readonly batteryKind: string;
  readonly target: string;
};

export type Pair = {
  readonly a: string;
  readonly b: string;
  /** Share of the draws in which a beats b; a tie counts half. */
  readonly aBeatsB: number;
  /** Neither beats the other in more than 95 % of the draws. */
  readonly isTie: boolean;
};

export type Ranking = {
  /** Groups from best to worst; within a group each is tied with the group's best. */
  readonly groups: readonly (readonly string[])[];
  readonly pairs: readonly Pair[];
  /** Contenders left out, and why. */
  readonly notComparable: readonly { readonly id: string; readonly because: string }[];
};

/** One beats another where it does so in more than this share of the draws: our rule. */
export const beatsShare = 0.95;

/**
 * Holds contenders against the first one's basis, battery kind and target, pair by pair.
 * @param contenders  each with as many draws as the first; others are not comparable
 * @param better  whether less or more is better
 * @returns the share of draws won for each pair, and who is not comparable; nothing for no contenders
 */
export function pairContenders(contenders: readonly Contender[], better: "less" | "more"): Pick<Ranking, "pairs" | "notComparable"> {
  const reference = contenders[0];
  if (reference === undefined) return { pairs: [], notComparable: [] };
  const notComparable = contenders.flatMap((contender) => {
    const because = reasonAgainst(contender, reference);
    return because === undefined ? [] : [{ id: contender.id, because }];
  });
  const comparable = comparableOf(contenders);
  const pairs = comparable.flatMap((a, index) =>
    comparable.slice(index + 1).map((b): Pair => {
      const aBeatsB = shareWon(a, b, better);
      return { a: a.id, b: b.id, aBeatsB, isTie: isTie(aBeatsB) };
    }),
  );
  return { pairs, notComparable };
}

const comparableOf = (contenders: readonly Contender[]): Contender[] =>
  contenders.filter((contender) => contenders[0] !== undefined && reasonAgainst(contender, contenders[0]) === undefined);

/** The same, with the comparable ones in groups from best to worst. */
export function rankContenders(contenders: readonly Contender[], better: "less" | "more"): Ranking {
  return { ...pairContenders(contenders, better), groups: groupTies(comparableOf(contenders), better) };
}

/** Whether a share of the draws won says that neither beats the other. */
export const isTie = (aBeatsB: number): boolean => aBeatsB >= 1 - beatsShare && aBeatsB <= beatsShare;

/** Share of the draws in which a beats b; equal draws, "never" against "never" among them, count half. NaN for no draws. */
export function shareWon(a: Pick<Contender, "draws">, b: Pick<Contender, "draws">, better: "less" | "more"): number {
  let won = 0;
  for (const [k, ofA] of a.draws.entries()) {
    const ofB = b.draws[k] ?? Number.NaN;
    if (ofA === ofB) won += 0.5;
    else if (better === "less" ? ofA < ofB : ofA > ofB) won += 1;
  }
  return won / a.draws.length;
}

function reasonAgainst(contender: Contender, reference: Contender): string | undefined {
  if (contender.batteryKind !== reference.batteryKind)
    return `it was tried on another kind of battery (${contender.batteryKind}, not ${reference.batteryKind})`;
  if (contender.target !== reference.target) return `it was tried towards another target (${contender.target}, not ${reference.target})`;
  if (contender.basis !== reference.basis) return `its figure is ${contender.basis}, the others' ${reference.basis}`;
  if (contender.draws.length !== reference.draws.length) return "its figure has another number of draws";
  return undefined;
}

/** The best by shares won against all opens a group; whoever is tied with it joins; the rest are ranked the same way. */
function groupTies(contenders: readonly Contender[], better: "less" | "more"): string[][] {
  const groups: string[][] = [];
  let rest = [...contenders];
  while (rest.length > 0) {
    const standing = (one: Contender): number => rest.reduce((sum, other) => sum + (other === one ? 0 : shareWon(one, other, better)), 0);
    const ordered = rest.map((one) => ({ one, standing: standing(one) })).sort((x, y) => y.standing - x.standing);
    const best = ordered[0]?.one;
    if (best === undefined) break;
    const group = ordered.map(({ one }) => one).filter((one) => one === best || shareWon(best, one, better) <= beatsShare);
    groups.push(group.map(({ id }) => id));
    rest = rest.filter((one) => !group.includes(one));
  }
  return groups;
}
