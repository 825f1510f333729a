/**
 * What the page that lays chargers side by side knows of each: a small file a charger, cut from its published results.
 * It is made for that page and may change with it; whoever builds on the results takes data/chargers/ and data/tests/.
 */
import type { Figure } from "../../nouns/figure.ts";
import type { FigureText } from "../../units/format.ts";

/** What a test was made on. Two tests that differ in one of these do not show which charger is better. */
export type Conditions = {
  readonly nominalVoltageV: number;
  readonly construction: string;
  readonly capacityAh: number;
  /** kg/l at 25 °C; null where the test set no target. */
  readonly targetAt25C: number | null;
};
export type Aspect = keyof Conditions;

export type ComparedFigure = Pick<Figure, "id" | "label" | "unit" | "value" | "low" | "high" | "basis" | "absent" | "doubts"> & {
  /** Its value and interval as they are written; null where it has no value. */
  readonly written: FigureText | null;
  /** What must be alike before two of these can be held against each other; [] where everything is alike by definition. */
  readonly heldOn: readonly Aspect[];
  /** Where it is told in full, with its evidence: a path from the site's root. */
  readonly to: string;
};

export type ComparedClaim = {
  readonly id: string;
  readonly label: string;
  /** As printed. */
  readonly claimed: string;
  /** null where nothing was measured that bears on it. */
  readonly measured: string | null;
  readonly outcome: string;
  readonly to: string;
};

/** A month connected at one temperature, told in words. */
export type ComparedSeason = {
  readonly place: string;
  /** An outcome or a weight, for its mark. */
  readonly mark: string;
  readonly words: string;
  /** null where no voltage is held. */
  readonly held: string | null;
};

/** One recording for drawing: equally many values in each list, null for a missing one. */
export type ComparedProfile = {
  readonly elapsedH: readonly number[];
  readonly voltageV: readonly (number | null)[];
  readonly currentA: readonly (number | null)[];
  /** Charge put in by then over the battery's rated capacity; null throughout where no current was recorded. */
  readonly chargeShare: readonly (number | null)[];
};

/** One test of a mode. */
export type ComparedRun = {
  readonly test: { readonly id: string; readonly name: string };
  readonly batteryName: string;
  /** Name, voltage, capacity and kind. */
  readonly battery: string;
  /** The density that counts as full, at 25 °C; null where the test set no target. */
  readonly target: string | null;
  readonly conditions: Conditions;
  /** How flat the battery was made; null where the test does not say. */
  readonly discharged: string | null;
  readonly status: string;
  readonly verdict: { readonly sentence: string; readonly weight: string };
  readonly characteristic: string | null;
  readonly figures: readonly ComparedFigure[];
  readonly profile: ComparedProfile | null;
  /** The recording that the profile is of, and who ended it; null where there is none. */
  readonly recording: { readonly id: string; readonly endedBy: string; readonly endedWords: string; readonly to: string } | null;
};

/** Draw k met the same battery for every charger. */
export type ComparedReference = {
  readonly words: string;
  readonly drawsH: readonly (number | null)[];
  readonly drawsKWh: readonly (number | null)[];
  /** In the currency of the charger's price; null where either is not stated. */
  readonly pricePerKWh: { readonly amount: number; readonly currency: string } | null;
};

export type ComparedMode = {
  readonly id: string;
  readonly name: string;
  readonly claims: readonly ComparedClaim[];
  readonly season: readonly ComparedSeason[];
  /** Figures projected for the reference battery. */
  readonly figures: readonly ComparedFigure[];
  /** The reference charge, draw by draw, null for "never"; the reason instead where there are no draws. */
  readonly reference: ComparedReference | { readonly because: string };
  readonly unknowns: readonly string[];
  /** The most telling test first; [] for a mode that nobody tested. */
  readonly runs: readonly ComparedRun[];
};

export type ComparedCharger = {
  readonly id: string;
  readonly name: string;
  readonly maker: string | null;
  readonly invented: boolean;
  /** Where and when the price was asked; null where nobody states it. */
  readonly priced: string | null;
  readonly verdict: { readonly sentence: string; readonly weight: string };
  /** Figures of the charger as a whole, such as its price. */
  readonly figures: readonly ComparedFigure[];
  /** The mode of the most telling test first. */
  readonly modes: readonly ComparedMode[];
  readonly notSeen: readonly string[];
};

/** The list of chargers that can be chosen. */
export type ComparedIndex = readonly { readonly id: string; readonly name: string }[];

/** Where the files lie, from the site's root. */
export const comparedIndexPath = "data/compare/index.json";
export const comparedPath = (chargerId: string): string => `data/compare/${chargerId}.json`;

/** The page's own address, from the site's root. */
export const sideBySidePath = "compare/";

/** More than four lines in one drawing, and columns on one sheet, are no longer told apart. */
export const fewestChargers = 2;
export const mostChargers = 4;
