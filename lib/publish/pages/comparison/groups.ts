/** The rows of the comparison gathered by charger, and what can be chosen between them. */
import type { ComparisonRow } from "../../results.ts";
import type { Words } from "../../words/index.ts";

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

/** Named by their words, which stand in the table of the comparison's words. */
type FacetId = keyof Words["comparison"]["facets"];
type ChoiceId = keyof Words["comparison"]["choices"];

/** What a reader can narrow the table by. A charger has a value where any of its tests has it. */
export type Facet = {
  readonly id: FacetId;
  /** ISO 4217, for the prices. */
  readonly currency?: string;
  /** The choices that any charger has, in order, with how many. */
  readonly choices: readonly { readonly value: ChoiceId; readonly count: number }[];
};

type FacetDefinition = {
  readonly id: FacetId;
  readonly choices: readonly { readonly value: ChoiceId; readonly fits: (row: ComparisonRow) => boolean }[];
};

const priceFigure = (row: ComparisonRow) => row.figures.find(({ id }) => id === "price");
const priceOf = (row: ComparisonRow): number | null => priceFigure(row)?.value ?? null;
const readyAfterH = (row: ComparisonRow) => row.figures.find(({ id }) => id === "reference-hours-95");
const sizeOf = (row: ComparisonRow): number => row.battery.capacityAh;

/** Bounds in ampere-hours by the vehicles that batteries of that size are in (common practice). */
const definitions: readonly FacetDefinition[] = [
  {
    id: "size",
    choices: [
      { value: "motorcycle", fits: (row) => sizeOf(row) <= 20 },
      { value: "small-car", fits: (row) => sizeOf(row) > 20 && sizeOf(row) < 55 },
      { value: "car", fits: (row) => sizeOf(row) >= 55 && sizeOf(row) < 80 },
      { value: "diesel", fits: (row) => sizeOf(row) >= 80 && sizeOf(row) < 110 },
      { value: "van", fits: (row) => sizeOf(row) >= 110 },
    ],
  },
  {
    id: "kind",
    choices: [
      { value: "flooded", fits: (row) => row.battery.construction.startsWith("flooded") },
      { value: "efb", fits: (row) => row.battery.construction === "EFB" },
      { value: "agm", fits: (row) => row.battery.construction === "AGM" },
      { value: "gel", fits: (row) => row.battery.construction === "gel" },
    ],
  },
  {
    id: "voltage",
    choices: ([6, 12, 24] as const).map((voltageV) => ({
      value: `${voltageV}` as const,
      fits: (row: ComparisonRow) => row.battery.nominalVoltageV === voltageV,
    })),
  },
  {
    id: "price",
    choices: [
      { value: "30", fits: (row) => within(priceOf(row), 0, 30) },
      { value: "60", fits: (row) => within(priceOf(row), 30, 60) },
      { value: "100", fits: (row) => within(priceOf(row), 60, 100) },
      { value: "more", fits: (row) => within(priceOf(row), 100, Number.POSITIVE_INFINITY) },
      { value: "unknown", fits: (row) => priceOf(row) === null },
    ],
  },
  {
    // By the middle of the forecast; its interval stands in the column.
    id: "ready",
    choices: [
      { value: "overnight", fits: (row) => within(readyAfterH(row)?.value ?? null, 0, 12) },
      { value: "day", fits: (row) => within(readyAfterH(row)?.value ?? null, 12, 24) },
      { value: "weekend", fits: (row) => within(readyAfterH(row)?.value ?? null, 24, 48) },
      { value: "later", fits: (row) => within(readyAfterH(row)?.value ?? null, 48, Number.POSITIVE_INFINITY) || isNeverReady(row) },
      { value: "untold", fits: (row) => readyAfterH(row) === undefined },
    ],
  },
  {
    id: "outcome",
    choices: [
      { value: "reached", fits: (row) => row.status === "reached" },
      { value: "not-reached", fits: (row) => row.status === "not reached" || row.status === "abandoned" },
      { value: "open", fits: (row) => row.status === "no target" || row.status === "not known" },
    ],
  },
];

function isNeverReady(row: ComparisonRow): boolean {
  return readyAfterH(row)?.absent?.kind === "not reached";
}

function within(value: number | null, above: number, upTo: number): boolean {
  return value !== null && value > above && value <= upTo;
}

/** The facets in which chargers differ: one with a single choice tells nothing apart, nor do prices in several currencies. */
export function facetsOf(groups: readonly Group[]): Facet[] {
  const currencies = [...new Set(groups.flatMap(({ shown }) => (priceOf(shown) === null ? [] : [priceFigure(shown)?.unit ?? ""])))];
  const [currency = ""] = currencies;
  return definitions
    .filter(({ id }) => id !== "price" || currencies.length === 1)
    .map(({ id, choices }) => ({
      id,
      ...(id === "price" ? { currency } : {}),
      choices: choices
        .map((choice) => ({
          value: choice.value,
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
