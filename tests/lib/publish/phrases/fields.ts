/** The fields of the results that hold generated words, and those that hold none: what the phrase book must cover. */
import type { Results } from "../../../../lib/publish/results.ts";

/** A string of the results, and the field that it stands in: "test.findings[].sentence". */
export type Text = { readonly field: string; readonly text: string };

/** A kind of field, by the end of its path, and the share of its different texts that the phrase book must know. */
type Spoken = { readonly name: string; readonly field: RegExp; readonly least: number };

/**
 * Fields with generated words, the first that fits counts. What a reader is told first must be there whole; a rare note may be missing
 * for a while, and is then shown in English.
 */
export const spoken: readonly Spoken[] = [
  { name: "findings", field: /findings\[\]\.(subject|verdict|sentence|wouldSettle)$/, least: 1 },
  { name: "findings' doubts", field: /findings\[\]\.doubts\[\]$/, least: 1 },
  { name: "findings' reasons", field: /findings\[\]\.why\[\]$/, least: 1 },
  { name: "verdicts", field: /verdict\.sentence$|leftOnWarning$/, least: 1 },
  { name: "claims", field: /claims\[\]\.(label|outcome|rule|why|wouldSettle|doubts\[\])$/, least: 1 },
  { name: "examination for a buyer", field: /examination\.(buyer|unseen|assumptions)\[\]$|examination\.why$/, least: 1 },
  { name: "examination", field: /examination\.(statements\[\]|.*\.(why|label|explain|hiddenBecause))$/, least: 0.95 },
  { name: "endings", field: /(endedWords|ending\.(words|why\[\]|wouldSettle))$/, least: 0.95 },
  { name: "characteristic", field: /characteristic\.words$/, least: 0.95 },
  { name: "stages", field: /stages\[\]\.(why|taperRefused)$|profile\.thinned$/, least: 0.95 },
  { name: "absences", field: /absent\.(kind|why)$/, least: 0.95 },
  { name: "figures' doubts", field: /[fF]igures\[\]\.doubts\[\]$/, least: 0.95 },
  { name: "figures' labels", field: /([fF]igures|repeats)\[\]\.label$/, least: 0.95 },
  {
    name: "forecast",
    field: /forecast\.(told\[\]|unknowns\[\]|reference\.words|.*\.because\[\]|readyBy.*\.(battery|flatness))$/,
    least: 0.95,
  },
  { name: "not seen", field: /notSeen\[\]$/, least: 0.95 },
  { name: "timeline", field: /timeline\.(words|readings\[\]\.label|findings\[\]\.verdict)$/, least: 0.95 },
  { name: "problems", field: /doubts\[\]\.(found|expected|mend)$/, least: 0.95 },
  { name: "records' labels", field: /(facts|disclosures|operator|stated)\[\]\.label$|instruments\[\]\.role$/, least: 0.95 },
  { name: "files", field: /files\[\]\.what$|notPublished\[\]\.why$|corrections\[\]\.kind$|status$/, least: 0.95 },
  { name: "methods", field: /methods\[\]\.(explain|source|checkedBy\[\])$/, least: 0.95 },
  { name: "rules", field: /rules\[\]\.(label|value|source)$/, least: 0.95 },
  { name: "how logs were read", field: /readAs\[\]\.(what|from)$|sampleRead$/, least: 0.95 },
];

/** Fields without generated words: identities, names, values, and what people wrote themselves. A method's formula may be signs alone. */
export const unspoken: readonly RegExp[] = [
  /(schemaVersion|methodVersion|toolVersion|sha256|file|path|download|place|unit|method|basis|letters|kind|weight|currency|language|languages\[\])$/,
  /(^|[.\]])(id|of|on|off|at|start|end|by|endedBy|limitedBy|confidence|witness|setBy|figure|recording|recorder|connection|test|charger|mode|construction)$/,
  /(name|maker|title|tagline|baseUrl|licence|inventedNote|correctionsPolicy|toldOn|answeredOn|answer|noticedBy|where|note|notes|stopRule)$/,
  /(claimedWords|claimedFrom|measuredWords|stated\[\]\.(words|from)|battery|html|text)$/,
  /(facts|disclosures|operator|readAs)\[\]\.value$/,
  /(findings\[\]\.figures|recordings|tests|recorded|causes|claims\[\]\.figure)\[\]$/,
  /(corrections|revisions|excluded|notPublished)\[\]\.(what|why|on)$/,
  /index\.methods\[\]/,
  /forecast\.(behaviour\.|.*\.(inWindow|isClaimed|verdict|mark)$)/,
  /index\.rows\[\]\.characteristic$|readings\[\]\.charger$/,
];

/** Every string of the results with its field; behaviours, which are plain data for the forecasting library, are left out. */
export function textsOf({ index, tests, chargers }: Results): Text[] {
  return [
    ...strings(index, "index"),
    ...tests.flatMap((test) => strings(test, "test")),
    ...chargers.flatMap((charger) => strings(charger, "charger")),
  ];
}

function strings(value: unknown, field: string): Text[] {
  if (typeof value === "string") return value === "" ? [] : [{ field, text: value }];
  if (Array.isArray(value)) return value.flatMap((item) => strings(item, `${field}[]`));
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, held]) => strings(held, `${field}.${key}`));
}

/** What kind of field it is, by its name; undefined for one without generated words. */
export function kindOf(field: string): Spoken | undefined {
  return spoken.find((kind) => kind.field.test(field));
}
