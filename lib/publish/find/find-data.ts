/** What the page that finds a charger needs of the results: every mode with its behaviour, as plain data. Published as data/find.json. */
import { type ChargerBehaviour, type Construction, densitiesByKind, type Range } from "../../project/index.ts";
import type { ChargerResult, ComparisonRow } from "../results.ts";
import type { ResultsFolder } from "../results-folder.ts";

/** Where the data lie, from the site's root. */
export const findDataPath = "data/find.json";

/** Vented batteries can be topped up or at least let gas out; sealed ones recombine it. */
export type Family = "vented" | "sealed";

/** A battery on which a mode was tested. */
export type TestedOn = { readonly test: string; readonly title: string; readonly capacityAh: number; readonly construction: Construction };

/** Words of the maker, and where they are printed. */
export type StatedByMaker = { readonly words: string; readonly from: string };

export type FindMode = {
  /** As it is called: the charger's name, with the mode's where the charger has several. */
  readonly name: string;
  readonly charger: { readonly id: string; readonly name: string };
  readonly mode: { readonly id: string; readonly name: string };
  readonly price: ChargerResult["price"];
  /** What it gives and when it stops, for the forecasting library; null where no recording shows it. */
  readonly behaviour: ChargerBehaviour | null;
  readonly told: readonly string[];
  readonly unknowns: readonly string[];
  /** Why it should not stay connected to a full battery; null where nothing speaks against it. */
  readonly leftOnWarning: string | null;
  /** V of the batteries that it was tested on; null where it was not. */
  readonly nominalVoltageV: number | null;
  readonly claimedAh: Range | null;
  /** The maker's own words on kinds of battery and on temperature, and where they are printed; null where none are. */
  readonly kindWords: StatedByMaker | null;
  readonly temperatureWords: StatedByMaker | null;
  /** Families of battery that the maker names or that it was tested on. */
  readonly families: readonly Family[];
  readonly testedOn: readonly TestedOn[];
};

export type FindData = {
  readonly schemaVersion: string;
  readonly invented: boolean;
  /** The currency in which prices are stated, where all are in one; null otherwise. */
  readonly currency: string | null;
  readonly modes: readonly FindMode[];
};

/** AGM and gel are sealed; an EFB is a vented battery, with or without caps. */
export function familyOf(construction: Construction): Family {
  return construction === "AGM" || construction === "gel" ? "sealed" : "vented";
}

/** Gathers every mode of every charger, in the order of the index. */
export function findDataOf(results: ResultsFolder): FindData {
  const { index } = results;
  const chargers = index.chargers.map(({ id }) => results.charger(id));
  const currencies = new Set(chargers.flatMap(({ price }) => (price === null ? [] : [price.currency])));
  return {
    schemaVersion: index.schemaVersion,
    invented: index.site.invented,
    currency: currencies.size === 1 ? ([...currencies][0] ?? null) : null,
    modes: chargers.flatMap((charger) => charger.modes.map((mode) => findModeOf(charger, mode, results.rowsOf(charger.id)))),
  };
}

function findModeOf(charger: ChargerResult, mode: ChargerResult["modes"][number], rows: readonly ComparisonRow[]): FindMode {
  const { forecast } = mode;
  const wordsOn = (label: string): StatedByMaker | null => {
    const stated = mode.stated.find((item) => item.label === label);
    return stated === undefined ? null : { words: stated.words, from: stated.from };
  };
  return {
    name: nameOf(charger, mode.name),
    charger: { id: charger.id, name: charger.name },
    mode: { id: mode.id, name: mode.name },
    price: charger.price,
    behaviour: forecast === null ? null : behaviourIn(forecast.behaviour),
    told: forecast?.told ?? [],
    unknowns: forecast?.unknowns ?? [],
    leftOnWarning: mode.leftOnWarning,
    nominalVoltageV: forecast?.nominalVoltageV ?? null,
    claimedAh: forecast?.claimedAh ?? null,
    kindWords: wordsOn("Batteries"),
    temperatureWords: wordsOn("Temperature"),
    families: [
      ...new Set((forecast?.readyBy ?? []).map(({ construction }) => familyOf(isConstruction(construction) ? construction : "flooded"))),
    ],
    testedOn: rows
      .filter((row) => row.charger.id === charger.id && row.mode.id === mode.id)
      .map(({ test, battery }) => ({
        test: test.id,
        title: test.name,
        capacityAh: battery.capacityAh,
        construction: isConstruction(battery.construction) ? battery.construction : "flooded",
      })),
  };
}

/** A charger's name, with its mode where it has more than one. */
export function nameOf({ name, modes }: Pick<ChargerResult, "name" | "modes">, mode: string): string {
  return modes.length > 1 ? `${name}, ${mode}` : name;
}

/** The published format lets a behaviour through as it is; what the library cannot run without is looked at here. */
function behaviourIn(published: Readonly<Record<string, unknown>>): ChargerBehaviour | null {
  return Array.isArray(published.steps) && published.efficiency !== undefined ? (published as unknown as ChargerBehaviour) : null;
}

function isConstruction(name: string): name is Construction {
  return name in densitiesByKind;
}
