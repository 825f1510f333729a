import type { MeasuredRecording } from "../../measure/recording.ts";
import type { TestContext } from "../../measure/test-context.ts";
import { describeRules, resolveRules } from "../../nouns/rules.ts";
import { pageLanguages, type Site } from "../../nouns/site.ts";
import type { InputFile } from "../../read/workspace-files.ts";
import { type ChargerResult, type ComparisonRow, type ProseResult, type SiteIndex, schemaVersion, type TestResult } from "../results.ts";
import { methodVersion, toolVersion } from "../version.ts";
import { assembleMethods } from "./methods.ts";
import { smallProfile } from "./recording.ts";
import { makeVerdict } from "./verdict.ts";

const rowFigures = [
  "connections-to-target",
  "hours-to-target",
  "cost-per-result",
  "charge-recorded",
  "charge-unrecorded",
  "holding-voltage",
];

/** A test's row in the comparison. */
export function assembleRow(context: TestContext, test: TestResult, charger: ChargerResult): ComparisonRow {
  const forecast = charger.modes.find((mode) => mode.id === test.mode.id)?.forecast;
  const reference = forecast?.reference?.figures ?? [];
  const telling = longestRecording(context.connections.flatMap((connection) => connection.recordings));
  return {
    charger: { id: test.charger.id, name: test.charger.name, maker: charger.maker },
    mode: test.mode,
    test: { id: test.id, name: test.title },
    battery: {
      id: test.battery.id,
      name: test.battery.name,
      nominalVoltageV: test.battery.nominalVoltageV,
      capacityAh: test.battery.capacityAh,
      construction: test.battery.construction,
    },
    status: test.status,
    verdict: makeVerdict([{ name: test.mode.name, tests: [test], season: forecast?.season ?? [] }]),
    claims: test.claims.map(({ id, label, outcome }) => ({ id, label, outcome })),
    figures: [...test.figures.filter((figure) => rowFigures.includes(figure.id)), ...reference, ...charger.figures],
    characteristic: telling?.characteristic.letters ?? null,
    timeline: test.timeline,
    profile: telling === undefined ? null : smallProfile(telling),
  };
}

/** The recording that shows most of a charge: the one with the most ampere-hours of stages, the first of equals. */
function longestRecording(recordings: readonly MeasuredRecording[]): MeasuredRecording | undefined {
  const charge = (recording: MeasuredRecording): number =>
    recording.stages.reduce((sum, stage) => sum + Math.max(0, stage.chargeAh ?? 0), 0);
  return [...recordings].sort((a, b) => charge(b) - charge(a))[0];
}

export type IndexInput = {
  readonly site: Site;
  readonly rows: readonly ComparisonRow[];
  readonly chargers: readonly Pick<ChargerResult, "id" | "name" | "corrections">[];
  readonly tests: readonly Pick<TestResult, "id" | "title">[];
  readonly pages: readonly ProseResult[];
  readonly notPublished: SiteIndex["notPublished"];
  readonly files: readonly InputFile[];
};

/** The index of all results. */
export function assembleIndex({ site, rows, chargers, tests, pages, notPublished, files }: IndexInput): SiteIndex {
  const { operator } = site;
  return {
    schemaVersion,
    methodVersion,
    toolVersion,
    site: {
      title: site.title,
      tagline: site.tagline ?? null,
      language: site.language,
      languages: [...pageLanguages(site)],
      baseUrl: site.baseUrl ?? null,
      invented: site.invented,
      inventedNote: site.inventedNote ?? null,
      licence: site.licence ?? null,
      operator: [
        { label: "Publisher", value: operator.name ?? null },
        { label: "Trade", value: operator.trade ?? null },
        { label: "Contact", value: operator.contact ?? null },
        { label: "Who pays for the site", value: operator.funding ?? null },
        { label: "Ties to makers, sellers or rivals", value: operator.ties ?? null },
      ],
      sells: operator.sells ?? null,
      correctionsPolicy: site.correctionsPolicy ?? null,
    },
    rules: describeRules(site),
    rows: [...rows],
    chargers: chargers.map(({ id, name }) => ({ id, name })),
    tests: tests.map(({ id, title }) => ({ id, name: title })),
    methods: assembleMethods(resolveRules(site)),
    pages: [...pages],
    corrections: chargers.flatMap((charger) =>
      charger.corrections.map(({ on, kind, what, why, changesVerdict }) => ({ charger: charger.id, on, kind, what, why, changesVerdict })),
    ),
    notPublished: [...notPublished],
    inputs: files.map(({ path, sha256, bytes }) => ({ path, sha256, bytes })),
  };
}
