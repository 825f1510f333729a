/** Which mode and test of each chosen charger stand side by side. */
import type { Choice } from "./choice.ts";
import type { ComparedCharger, ComparedMode, ComparedRun } from "./compared.ts";
import { differingAspects } from "./conditions.ts";

/** A charger in one mode, with one test of it; no test where nobody tested the mode. */
export type Setting = { readonly mode: ComparedMode; readonly run: ComparedRun | undefined };
export type Entrant = Setting & {
  /** A to D, by which tables and lines name it. */
  readonly letter: string;
  readonly charger: ComparedCharger;
};

/** More combinations than this are not tried: every charger then shows its most telling test. */
const mostCombinations = 10_000;

/** Every mode and test of a charger, the most telling first, untested modes last. */
export function settingsOf(charger: ComparedCharger): Setting[] {
  const tested = charger.modes.flatMap((mode) => mode.runs.map((run): Setting => ({ mode, run })));
  const untested = charger.modes.filter((mode) => mode.runs.length === 0).map((mode): Setting => ({ mode, run: undefined }));
  return [...tested, ...untested];
}

/**
 * Lines up what was chosen. Where a reader named no mode or test, the tests are taken that make most pairs comparable, the more telling of equals.
 * A name that the charger does not have is passed over.
 * @returns one entrant a choice, in order; a charger without any mode is left out
 */
export function lineUp(chosen: readonly { readonly choice: Choice; readonly charger: ComparedCharger }[]): Entrant[] {
  const open = chosen
    .map(({ choice, charger }) => ({ charger, settings: fitting(choice, settingsOf(charger)) }))
    .filter(({ settings }) => settings.length > 0);
  const best = mostComparable(open.map(({ settings }) => settings));
  return open.flatMap(({ charger }, index) => {
    const setting = best[index];
    return setting === undefined ? [] : [{ ...setting, charger, letter: String.fromCharCode(65 + index) }];
  });
}

function fitting({ mode, test }: Choice, settings: readonly Setting[]): readonly Setting[] {
  const ofMode = settings.filter((setting) => mode === undefined || setting.mode.id === mode);
  const ofTest = ofMode.filter((setting) => test === undefined || setting.run?.test.id === test);
  return [ofTest, ofMode, settings].find((some) => some.length > 0) ?? [];
}

function mostComparable(open: readonly (readonly Setting[])[]): readonly Setting[] {
  const count = open.reduce((product, settings) => product * settings.length, 1);
  if (count > mostCombinations) return open.flatMap((settings) => settings.slice(0, 1));
  const combinations = open.reduce<Setting[][]>(
    (begun, settings) => begun.flatMap((some) => settings.map((setting) => [...some, setting])),
    [[]],
  );
  const distinct = combinations.filter(isDistinct);
  // The first of equals stays, and combinations come with the most telling tests first.
  return (distinct.length === 0 ? combinations : distinct).reduce((best, some) =>
    comparablePairs(some) > comparablePairs(best) ? some : best,
  );
}

/** A charger that was chosen twice shows two of its tests. */
function isDistinct(settings: readonly Setting[]): boolean {
  return settings.every((a, index) => settings.slice(index + 1).every((b) => a.mode !== b.mode || a.run !== b.run));
}

function comparablePairs(settings: readonly Setting[]): number {
  return settings.reduce(
    (count, { run: a }, index) =>
      count +
      settings
        .slice(index + 1)
        .filter(({ run: b }) => a !== undefined && b !== undefined && differingAspects(a.conditions, b.conditions).length === 0).length,
    0,
  );
}
