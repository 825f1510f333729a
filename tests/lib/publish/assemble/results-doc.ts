/** docs/results.md, made from the schemas of the results: every object, every field, its type and what it means. */
import { resultSchemas } from "../../../../lib/publish/schemas.ts";

type Node = {
  readonly $ref?: string;
  readonly $defs?: Readonly<Record<string, Node>>;
  readonly type?: string | readonly string[];
  readonly description?: string;
  readonly properties?: Readonly<Record<string, Node>>;
  readonly items?: Node;
  readonly prefixItems?: readonly Node[];
  readonly anyOf?: readonly Node[];
  readonly enum?: readonly unknown[];
};

export type Field = { readonly path: string; readonly type: string; readonly meaning: string | undefined };
export type Section = { readonly name: string; readonly fields: readonly Field[] };

/**
 * What a field means where its schema does not say, by the end of its path: the longest end that fits counts. Fields of one name mean
 * the same wherever they stand, unless a longer end says otherwise.
 */
const meanings: Readonly<Record<string, string>> = {
  schemaVersion: "Version of this format; the first number goes up when a reader of the old one would misread the new",
  methodVersion: "Version of all methods together; docs/method-changes.md tells what each changed",
  toolVersion: "Version of the program",
  id: "Names it in addresses and references; never changes once published",
  name: "As the record gives it",
  title: "As the record gives it, or made of charger, mode and battery",
  label: "In words, for a reader",
  unit: "Unit symbol; empty for a pure number or for words",
  language: "BCP 47 tag of the words",
  invented: "true for demonstration data; every page then says so",
  inventedNote: "What to say where invented data are shown",
  notes: "The reviewer's notes on the test, as written",
  note: "As written; null where there is none",
  facts: "What the records state, as label and value",
  doubts: "What limits trust, in words",
  figures: "Figures, in the form of the section figure",
  findings: "Findings, in the form of the section finding",
  claims: "Judged claims, in the form of the section judged-claim",
  timeline: "The evidence strip, in the form of the section timeline",
  evidence: "Files and rows that the value rests on; never empty where there is a value",
  on: "The day, or the instant; null where nobody noted it",
  why: "The reason, in words with the numbers that decided",
  what: "What it is, in words",
  words: "Told in words",
  weight: "good, bad, caution, unsure, untested or note: how it weighs for a reader",
  verdict: "In a few words",
  "verdict.sentence":
    "The first thing a buyer reads, over all modes and tests; holds nothing that claims, findings, doubts and forecast do not",
  sha256: "SHA-256 of the file's bytes, 64 hexadecimal digits",
  bytes: "Length of the file",
  path: "Path from the workspace's root",
  files: "Every input file that the test rests on, with its address and digest",
  file: "Path from the workspace's root",
  download: "Address of the raw file, from the site's root",
  source: "Where the formula, rule or number is from",
  method: "Method and its version",
  explain: "What it is, in words a technician can defend",
  formula: "The formula in letters; null where there is none to write",
  kind: "What kind it is, one of the words listed",
  figure: "The figure it rests on, as of#id",
  low: "Lower end of the interval; null where none can be defended",
  high: "Upper end of the interval; null where none can be defended",
  value: "The value; null only where it is absent, with why",
  "figure.absent.kind": "What kind of absence: not recorded, not measured, not stated, not reached, not applicable, cannot tell",
  "figure.absent.why": "The reason, in words",
  "facts.value": "null is shown as 'not stated'",
  "rules.value": "The rule as it holds on this site",
  "rules.setBy": "default, or this site",
  site: "Who publishes, and how the site calls itself",
  "site.tagline": "One sentence under the title; null where there is none",
  "site.baseUrl": "Where the site stands; null where it is not stated",
  "site.licence": "Licence of data and words",
  "site.operator": "Publisher, trade, contact, funding, ties",
  sells: "Whether the publisher sells chargers or batteries; null where not stated",
  correctionsPolicy: "How mistakes are mended, in the publisher's words",
  rules: "Every rule by which figures are judged, with who set it",
  rows: "One row a test: what the comparison shows",
  "recordings.rows": "Every line of the log, counted: nothing is skipped in silence",
  "rows.lines": "Lines of the file",
  "rows.samples": "Rows read as samples",
  "rows.blank": "Blank lines",
  "rows.excluded": "Rows that the test record lists as bad",
  "rows.empty": "Rows with a time and no value",
  charger: "The charger",
  "readings.charger": "Whether the visitor found the charger connected; null where not noted",
  "corrections.charger": "Id of the charger",
  maker: "The maker; null where not stated",
  mode: "The mode tested",
  test: "The test",
  battery: "The test battery",
  nominalVoltageV: "6, 12 or 24 V",
  capacityAh: "Rated capacity, Ah",
  construction: "How the battery is built",
  sealed: "true for AGM and gel, whose acid cannot be read",
  status: "reached, not reached, abandoned, or no target",
  outcome: "meets, short of, above, cannot tell, or not put to the test",
  characteristic: "The charge characteristic, in letters of DIN 41772 and in words",
  letters: "Such as IUoU; null where no stage has a letter",
  complete: "true only where the charger was seen to end; false where the recording ended before it did",
  "timeline.start": "First event, ISO 8601 in the zone of the bench; null where no event has a time",
  "timeline.end": "Last event",
  connections: "From clamps on to clamps off, each",
  "timeline.connections.recorded": "Stretches with samples, gaps left out",
  startH: "Hours from the strip's start",
  endH: "Hours from the strip's start",
  atH: "Hours from the strip's start; null for what concerns the whole test",
  recording: "Id of the recording",
  recordings: "Log files, each",
  "connections.recordings": "Ids of its recordings",
  endedBy: "charger, recorder, person, mains or unknown; never charger because a recording stopped",
  endedWords: "The same in words",
  readings: "Visits, each",
  number: "Counted from 1",
  profile: "A small series for drawing; null where nothing was recorded",
  elapsedH: "Hours from the recording's first row",
  voltageV: "V; null marks a gap, or a log without voltage",
  currentA: "A into the battery; null marks a gap, or a log without current",
  chargers: "Every published charger",
  tests: "Every published test",
  "modes.leftOnWarning": "Why it should not stay connected to a full battery, seen before forecast; null where nothing speaks against it",
  "modes.tests": "Ids of the tests of this mode",
  methods: "One entry for each figure, claim and finding",
  by: "Who, or by whom; null where not stated",
  "limits.by": "Who limited the current: charger, throttle, battery, nobody or unknown",
  corrections: "Corrections, newest last, as the charger's record lists them",
  changesVerdict: "Whether the verdict changed",
  noticedBy: "Who noticed; null where not stated",
  instruments: "Every instrument used, by role",
  role: "What it was used for",
  target: "What the test was run to; null where it names none",
  densityAt25C: "kg/l at 25 °C",
  stopRule: "What counts as reached; null where not stated",
  off: "Clamps off; null where nobody saw it",
  connection: "Id of the connection",
  start: "ISO 8601 in the zone of the bench; null where nobody knows when the log began",
  end: "ISO 8601 in the zone of the bench; null where nobody knows when the log began",
  "readAs.what": "What was chosen: delimiter, decimal mark, a column …",
  "readAs.value": "What it was read as",
  "readAs.from": "Who chose: the instrument's record, the test's record, or detected from the file",
  stages: "Stages, in the form of the section stage",
  "stage.endS": "Seconds from the recording's first row",
  startS: "Seconds from the recording's first row",
  endS: "Seconds from the recording's first row",
  lines: "First and last line of the file",
  voltageMeanV: "V, weighted by time",
  voltageStartV: "V, median of the first rows",
  voltageEndV: "V, median of the last rows",
  currentMeanA: "A, weighted by time",
  currentSpreadA: "A, standard deviation",
  currentStartA: "A, median of the first rows",
  currentEndA: "A, median of the last rows",
  chargeAh: "Ah in this stage; gaps add nothing",
  energyWh: "Wh in this stage; gaps add nothing",
  tauH: "Time constant, h",
  tauLowH: "Lower end of the time constant's 95 % interval, h",
  tauHighH: "Upper end of it, h",
  endCurrentA: "Median of the last fitted currents, A",
  rmsA: "Scatter about the fitted curve, A",
  confidence: "clear, likely or doubtful",
  ending: "Who ended the recording, and how that is known",
  "ending.by": "charger, recorder, person, mains or unknown",
  wouldSettle: "The measurement that would settle it; null where nothing is open",
  gaps: "Pauses longer than the recorder's own pace; they add nothing to charge and energy",
  limits: "Who limited the current, from when to when",
  found: "What was found, the file's own text in double quotes",
  expected: "What was expected",
  mend: "What the reader can do about it",
  mixed: "Whether the acid was mixed before reading; null where not noted",
  claimed: "What the maker claims, in the unit; null for a claim in words",
  claimedFrom: "Where it is printed",
  acceptHigh: "The highest true value that still meets the claim; null where there is no limit",
  measured: "What was measured; null where nothing bears on the claim",
  revisions: "Changes of the test since it was published",
  excluded: "What was left out, and why",
  price: "What a buyer pays; null where not stated",
  amount: "The amount, in the currency",
  currency: "ISO 4217 code",
  where: "The kind of shop; null where not stated",
  disclosures: "How the sample was obtained, who pays, which ties: what is null was not stated",
  makerAnswer: "Whether the maker was told of the result, and the answer; null where the record says nothing",
  toldOn: "The day the maker was told",
  answeredOn: "The day the maker answered",
  answer: "The answer, in full",
  modes: "The modes printed on the device",
  from: "Where it is printed",
  keyFigures: "The figures that stand for a test where it is only mentioned",
  prose: "The reviewer's words; null where there are none",
  equalReadings: "How many readings, one after the other, must be equal",
  apartMin: "Minutes on charge from one to the next",
  withinKgPerL: "How far apart they may be and still count as equal, kg/l at 25 °C",
  examination: "The cross-examination of the battery's readings, in the form of the section examination",
  "accounts.witness": "Which witness: density, rest-voltage, charge-balance or cranking",
  visit: "Number of the visit",
  visits: "What all witnesses together say of each visit",
  intervals: "What happened between one visit and the next",
  fromVisit: "Number of the visit at its start",
  toVisit: "Number of the visit at its end",
  "combinations.causes": "Ids of the causes taken together; empty for nothing to explain",
  "combinations.probability": "Probability after all readings",
  expectedBits: "Information expected of it, bit",
  "mode-forecast.readyBy": "Which batteries are ready by when, a table for each kind of battery",
  "readyBy.airC": "Temperature of the place, °C",
  "readyBy.cells": "One for each size of battery and how flat it is",
  "cells.flatness": "How flat, in a customer's words",
  "cells.deadlines": "For each deadline the probability of being ready, at 95 % of what the battery holds",
  deadlineH: "Hours from clamps on",
  "deadlines.probability": "Share of the draws in which it is ready by then",
  "mode-forecast.season": "A month connected to a full battery, at three temperatures",
  "season.place": "cold-shed, cellar or warm-garage",
  "season.temperatureC": "Temperature there, °C",
  "season.mainsKWh": "Energy from the mains in 30 days, kWh; null where nobody recorded what the mode does with a full battery",
  "season.waterG": "Water lost in 30 days, g, at most; null as above",
  "season.restartsPerDay": "How often it starts again in a day; null as above",
  "reference.drawsKWh": "Energy from the mains until then in the same draws, kWh; null for never",
  "reference.pricePerKWh":
    "What a kilowatt-hour costs in the currency of the charger's price; null where either is not stated, or no rate leads from one to the other",
  "pricePerKWh.amount": "Money",
  "pricePerKWh.currency": "ISO 4217",
  "mode-forecast.ownBatteries": "Batteries of the bench once more, each as flat as it was found before a test of this mode",
  "ownBatteries.test": "The test before which it was found so",
  "ownBatteries.battery": "Its name",
  "ownBatteries.knownBy": "Logs of its charges that tell of it, this test's own among them",
  "ownBatteries.figures": "Hours to 80 %, 95 % and full, projected",
  "season.topUpDays": "Days until a vented battery's reserve of water is used up, at the earliest; null ends for never, null as above",
  "season.heldV": "Voltage held, V; null where none is held, or nobody recorded it",
  "season.windowV": "The float window at that temperature, V",
  "season.inWindow": "How the one stands to the other",
};

/** The sections of the document: three files, then the forms that they share, each once. */
export function resultSections(): Section[] {
  const shared = new Map<string, Node>();
  const sections = Object.values(resultSchemas()).map((schema) => {
    const root = schema as Node;
    for (const [name, node] of Object.entries(root.$defs ?? {})) shared.set(name, node);
    return nameOf(root);
  });
  const order = [...new Set([...sections, ...[...shared.keys()].sort()])];
  return order.flatMap((name) => {
    const node = shared.get(name);
    return node === undefined ? [] : [{ name, fields: fieldsOf(node, "", name) }];
  });
}

function nameOf(node: Node): string {
  return node.$ref?.split("/").at(-1) ?? "";
}

function fieldsOf(node: Node, prefix: string, section: string): Field[] {
  return Object.entries(node.properties ?? {}).flatMap(([key, child]) => {
    const path = prefix === "" ? key : `${prefix}.${key}`;
    return [
      { path, type: typeOf(child), meaning: child.description ?? meaningOf(`${section}.${path}`) },
      ...insidesOf(child).flatMap((inside) => fieldsOf(inside, path, section)),
    ];
  });
}

/** Objects that stand inside a field: in it, in its list, or as one of its alternatives. Shared forms have a section of their own. */
function insidesOf(node: Node): Node[] {
  if (node.$ref !== undefined) return [];
  return [
    ...(node.properties === undefined ? [] : [node]),
    ...(node.items === undefined ? [] : insidesOf(node.items)),
    ...(node.anyOf ?? []).flatMap(insidesOf),
  ];
}

function typeOf(node: Node): string {
  if (node.$ref !== undefined) return nameOf(node);
  if (node.enum !== undefined) return node.enum.map((value) => JSON.stringify(value)).join(", ");
  if (node.anyOf !== undefined) return node.anyOf.map(typeOf).join(" or ");
  if (node.prefixItems !== undefined) return `[${node.prefixItems.map(typeOf).join(", ")}]`;
  if (node.items !== undefined) return `list of ${typeOf(node.items)}`;
  return typeof node.type === "string" ? node.type : (node.type ?? ["any"]).join(" or ");
}

function meaningOf(path: string): string | undefined {
  const steps = path.split(".");
  for (let from = 0; from < steps.length; from++) {
    const meaning = meanings[steps.slice(from).join(".")];
    if (meaning !== undefined) return meaning;
  }
  return undefined;
}

const titles: Readonly<Record<string, string>> = {
  "site-index": "data/index.json",
  "test-result": "data/tests/<test>.json",
  "charger-result": "data/chargers/<charger>.json",
};

/** The whole document. */
export function renderResultsDoc(): string {
  const head = `# The results, field by field

Made by \`node --import tsx tests/lib/publish/assemble/write-results-doc.ts\` from the schemas in lib/publish/results.ts; a test holds the
two together. The JSON Schemas stand beside the results, in data/schemas. Pages, charts, tables and downloads are made from these files
alone, so whatever a page shows can be found here.

- A value that is not known is \`null\` beside the reason. It is never 0, and never left out.
- \`low\` and \`high\` hold the true value with about 95 % probability. Both \`null\` means that no interval can be defended.
- Numbers keep twelve digits; rounding is the page's. Nothing holds the time of the build, a path of the machine or its time zone.
- Instants are ISO 8601 in the zone of the bench. A figure is referred to as \`of#id\`, from a charger's file as \`test/of#id\`.
- \`ending.by\` and \`endedBy\` are \`charger\` only where the charger was seen to end. A recording that stops says nothing of the charger.
`;
  const cell = (text: string): string => text.replaceAll("|", "\\|").replaceAll("\n", " ");
  const sections = resultSections().map(({ name, fields }) => {
    const lines = fields.map(({ path, type, meaning }) => `| \`${path}\` | ${cell(type)} | ${cell(meaning ?? "")} |`);
    return `\n## ${titles[name] === undefined ? name : `${titles[name]} (${name})`}\n\n| field | type | meaning |\n|---|---|---|\n${lines.join("\n")}\n`;
  });
  return head + sections.join("");
}
