/** The rows of the comparison gathered by charger, and what can be chosen between them. */
import type { ComparisonRow } from "../../results.ts";

/** A charger: the test that its row shows, and its other tests. */
export type Group = { readonly shown: ComparisonRow; readonly others: readonly ComparisonRow[] };

/** The figures a buyer compares by, in the order of the columns; any other figure of a row follows them. */
export const firstFigures = ["reference-hours-95", "hours-to-target", "connections-to-target", "cost-per-result", "price"];

export type Column = { readonly id: string; readonly label: string };

/** One column for each figure that any row has. */
export function figureColumns(rows: readonly ComparisonRow[]): Column[] {
  const labels = new Map<string, string>();
  for (const row of rows) for (const figure of row.figures) labels.set(figure.id, labels.get(figure.id) ?? figure.label);
  const rank = (id: string) => (firstFigures.includes(id) ? firstFigures.indexOf(id) : firstFigures.length);
  return [...labels].map(([id, label]) => ({ id, label })).sort((a, b) => rank(a.id) - rank(b.id));
}

/** One group a charger, by name. The most telling test is shown: one that reached its target, then the one with most recorded. */
export function chargerGroups(rows: readonly ComparisonRow[]): Group[] {
  const byCharger = new Map<string, ComparisonRow[]>();
  for (const row of rows) byCharger.set(row.charger.id, [...(byCharger.get(row.charger.id) ?? []), row]);
  return [...byCharger.values()]
    .flatMap((tests) => {
      const [shown, ...others] = [...tests].sort((a, b) => telling(b) - telling(a));
      return shown === undefined ? [] : [{ shown, others }];
    })
    .sort((a, b) => a.shown.charger.name.localeCompare(b.shown.charger.name, "en") || (a.shown.charger.id < b.shown.charger.id ? -1 : 1));
}

function telling(row: ComparisonRow): number {
  const recordedH = row.timeline.connections.reduce(
    (sum, connection) => sum + connection.recorded.reduce((hours, stretch) => hours + stretch.endH - stretch.startH, 0),
    0,
  );
  return (row.status === "reached" ? 1e6 : 0) + recordedH;
}

/** What a reader can narrow the table by. A charger has a value where any of its tests has it. */
export type Facet = {
  readonly id: string;
  readonly label: string;
  /** The choices that any charger has, in order, with how many. */
  readonly choices: readonly { readonly value: string; readonly label: string; readonly count: number }[];
};

type FacetDefinition = {
  readonly id: string;
  readonly label: string;
  readonly choices: readonly { readonly value: string; readonly label: string; readonly fits: (row: ComparisonRow) => boolean }[];
};

const priceOf = (row: ComparisonRow): number | null => row.figures.find(({ id }) => id === "price")?.value ?? null;
const sizeOf = (row: ComparisonRow): number => row.battery.capacityAh;

/** Bounds in ampere-hours by the vehicles that batteries of that size are in (common practice). */
const definitions: readonly FacetDefinition[] = [
  {
    id: "size",
    label: "Battery tested",
    choices: [
      { value: "motorcycle", label: "motorcycle, up to 20 Ah", fits: (row) => sizeOf(row) <= 20 },
      { value: "small-car", label: "small car, 21 to 54 Ah", fits: (row) => sizeOf(row) > 20 && sizeOf(row) < 55 },
      { value: "car", label: "car, 55 to 79 Ah", fits: (row) => sizeOf(row) >= 55 && sizeOf(row) < 80 },
      { value: "diesel", label: "diesel, 80 to 109 Ah", fits: (row) => sizeOf(row) >= 80 && sizeOf(row) < 110 },
      { value: "van", label: "van or boat, from 110 Ah", fits: (row) => sizeOf(row) >= 110 },
    ],
  },
  {
    id: "kind",
    label: "Kind of battery",
    choices: [
      { value: "flooded", label: "flooded", fits: (row) => row.battery.construction.startsWith("flooded") },
      { value: "efb", label: "EFB", fits: (row) => row.battery.construction === "EFB" },
      { value: "agm", label: "AGM", fits: (row) => row.battery.construction === "AGM" },
      { value: "gel", label: "gel", fits: (row) => row.battery.construction === "gel" },
    ],
  },
  {
    id: "voltage",
    label: "Voltage",
    choices: [6, 12, 24].map((voltageV) => ({
      value: String(voltageV),
      label: `${voltageV} V`,
      fits: (row: ComparisonRow) => row.battery.nominalVoltageV === voltageV,
    })),
  },
  {
    id: "price",
    label: "Price",
    choices: [
      { value: "30", label: "up to 30", fits: (row) => within(priceOf(row), 0, 30) },
      { value: "60", label: "30 to 60", fits: (row) => within(priceOf(row), 30, 60) },
      { value: "100", label: "60 to 100", fits: (row) => within(priceOf(row), 60, 100) },
      { value: "more", label: "more than 100", fits: (row) => within(priceOf(row), 100, Number.POSITIVE_INFINITY) },
      { value: "unknown", label: "not stated", fits: (row) => priceOf(row) === null },
    ],
  },
  {
    id: "outcome",
    label: "Outcome",
    choices: [
      { value: "reached", label: "brought a battery back to full", fits: (row) => row.status === "reached" },
      { value: "not-reached", label: "did not", fits: (row) => row.status === "not reached" || row.status === "abandoned" },
      { value: "open", label: "not known", fits: (row) => row.status === "no target" || row.status === "not known" },
    ],
  },
];

function within(price: number | null, above: number, upTo: number): boolean {
  return price !== null && price > above && price <= upTo;
}

/** The facets in which chargers differ: one with a single choice tells nothing apart. */
export function facetsOf(groups: readonly Group[]): Facet[] {
  return definitions
    .map(({ id, label, choices }) => ({
      id,
      label,
      choices: choices
        .map((choice) => ({
          value: choice.value,
          label: choice.label,
          count: groups.filter(({ shown, others }) => [shown, ...others].some(choice.fits)).length,
        }))
        .filter((choice) => choice.count > 0),
    }))
    .filter((facet) => facet.choices.length > 1);
}

/** What a charger is to each facet, as "size:car size:motorcycle kind:flooded". */
export function facetWords({ shown, others }: Group): string {
  return definitions
    .flatMap(({ id, choices }) => choices.filter((choice) => [shown, ...others].some(choice.fits)).map((choice) => `${id}:${choice.value}`))
    .join(" ");
}
