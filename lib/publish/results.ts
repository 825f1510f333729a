/**
 * The public results format: what _site/data holds. Pages, charts, feeds and downloads are made from it alone.
 *
 * It never holds a build time, a path of the machine, or the machine's time zone. docs/results.md explains every field;
 * the JSON Schemas beside the results are generated from here.
 */
import { z } from "zod";
import { evidence } from "../nouns/evidence.ts";
import { figure } from "../nouns/figure.ts";
import { finding, judgedClaim } from "../nouns/finding.ts";
import { enders, limiters, stage } from "../nouns/stage.ts";

export const schemaVersion = "1.0";

/** A problem of level "doubt" that touches a test, as published beside it. */
const publishedDoubt = z.strictObject({
  id: z.string(),
  place: z.string().describe("file:line:column"),
  found: z.string(),
  expected: z.string(),
  mend: z.string(),
});

const instant = z.string().describe("ISO 8601 with offset, in the zone of the bench");

/** The evidence strip: what was seen and what was not, from first to last event. Hours count from `start`. */
export const timeline = z
  .strictObject({
    start: instant.nullable(),
    end: instant.nullable(),
    spanH: z.number().describe("From first to last event"),
    connections: z.array(
      z.strictObject({
        id: z.string(),
        startH: z.number(),
        endH: z.number(),
        endKnown: z.boolean().describe("false where nobody saw the clamps come off; endH is then the last thing known of it"),
        recorded: z.array(z.strictObject({ startH: z.number(), endH: z.number(), recording: z.string() })),
        endedBy: z.enum(enders),
      }),
    ),
    readings: z.array(z.strictObject({ number: z.int(), atH: z.number(), label: z.string() })),
    findings: z.array(z.strictObject({ id: z.string(), atH: z.number().nullable(), verdict: z.string(), weight: z.string() })),
    words: z.string().describe("The strip told as text"),
  })
  .meta({ id: "timeline", title: "Evidence strip" });
export type Timeline = z.infer<typeof timeline>;

export const recordingResult = z.strictObject({
  id: z.string().describe("The file's name without its folder"),
  file: z.string(),
  download: z.string().describe("Address of the raw file, from the site's root"),
  sha256: z.string(),
  bytes: z.int(),
  connection: z.string(),
  recorder: z.string().nullable().describe("Instrument id"),
  start: instant.nullable(),
  end: instant.nullable(),
  rows: z.strictObject({ lines: z.int(), samples: z.int(), blank: z.int(), excluded: z.int(), empty: z.int() }),
  readAs: z
    .array(z.strictObject({ what: z.string(), value: z.string(), from: z.enum(["instrument record", "test record", "detected"]) }))
    .describe("How the file was read, choice by choice"),
  sampleRead: z.string().nullable().describe("One row read back in words"),
  figures: z.array(figure),
  stages: z.array(stage),
  characteristic: z.strictObject({
    letters: z.string().nullable(),
    words: z.string(),
    complete: z.boolean().describe("false where the recording ended before the charger did"),
  }),
  ending: z.strictObject({ by: z.enum(enders), words: z.string(), why: z.array(z.string()), wouldSettle: z.string().nullable() }),
  gaps: z.array(z.strictObject({ startS: z.number(), endS: z.number(), lines: z.tuple([z.int(), z.int()]) })),
  limits: z.array(z.strictObject({ startS: z.number(), endS: z.number(), by: z.enum(limiters) })),
  profile: z
    .strictObject({
      elapsedH: z.array(z.number()),
      voltageV: z.array(z.number().nullable()),
      currentA: z.array(z.number().nullable()),
      thinned: z.string().describe("How the series was thinned for drawing"),
    })
    .describe("For drawing only; the raw file is beside it"),
  doubts: z.array(publishedDoubt),
});
export type RecordingResult = z.infer<typeof recordingResult>;

export const connectionResult = z.strictObject({
  id: z.string(),
  number: z.int(),
  on: instant.nullable(),
  off: instant.nullable(),
  note: z.string().nullable(),
  endedBy: z.enum(enders),
  endedWords: z.string(),
  recordings: z.array(z.string()),
  figures: z.array(figure),
});
export type ConnectionResult = z.infer<typeof connectionResult>;

export const readingResult = z.strictObject({
  number: z.int(),
  at: instant,
  atH: z.number().describe("Hours from the strip's start"),
  connectionsBefore: z.int().describe("How many connections had begun by then"),
  mixed: z.boolean().nullable(),
  charger: z.enum(["connected", "disconnected"]).nullable(),
  note: z.string().nullable(),
  figures: z.array(figure).describe("Raw values as read, and the density brought to 25 °C"),
});
export type ReadingResult = z.infer<typeof readingResult>;

const named = z.strictObject({ id: z.string(), name: z.string() });
const disclosure = z.array(z.strictObject({ label: z.string(), value: z.string().nullable().describe("null is shown as 'not stated'") }));

export const testResult = z
  .strictObject({
    schemaVersion: z.string(),
    methodVersion: z.string(),
    id: z.string(),
    title: z.string(),
    invented: z.boolean(),
    inventedNote: z.string().nullable(),
    charger: named,
    mode: named,
    battery: z.strictObject({
      id: z.string(),
      name: z.string(),
      facts: disclosure,
      sealed: z.boolean(),
      nominalVoltageV: z.number(),
      capacityAh: z.number(),
      construction: z.string(),
    }),
    instruments: z.array(z.strictObject({ id: z.string(), name: z.string(), role: z.string(), facts: disclosure })),
    facts: disclosure.describe("Who, where, when, how discharged, target, exclusions"),
    status: z.enum(["reached", "not reached", "abandoned", "no target"]),
    target: z.strictObject({ densityAt25C: z.number(), stopRule: z.string().nullable() }).nullable(),
    timeline,
    connections: z.array(connectionResult),
    recordings: z.array(recordingResult),
    readings: z.array(readingResult),
    figures: z.array(figure).describe("Figures of the test as a whole"),
    claims: z.array(judgedClaim),
    findings: z.array(finding),
    doubts: z.array(publishedDoubt),
    notes: z.string().nullable(),
    revisions: z.array(z.strictObject({ on: z.string(), what: z.string(), why: z.string(), noticedBy: z.string().nullable() })),
    excluded: z.array(z.strictObject({ what: z.string(), why: z.string() })),
    files: z.array(
      z.strictObject({
        path: z.string().describe("From the workspace's root"),
        download: z.string(),
        sha256: z.string(),
        bytes: z.int(),
        what: z.string(),
      }),
    ),
  })
  .meta({ id: "test-result", title: "Results of one test" });
export type TestResult = z.infer<typeof testResult>;

export const proseResult = z.strictObject({
  id: z.string(),
  title: z.string(),
  language: z.string(),
  by: z.string().nullable(),
  on: z.string().nullable(),
  html: z.string().describe("Rendered from Markdown with HTML switched off; safe to place in a page"),
  text: z.string().describe("The same without markup"),
});
export type ProseResult = z.infer<typeof proseResult>;

export const repeats = z.strictObject({
  id: z.string().describe("The figure that is repeated, such as limit-voltage"),
  label: z.string(),
  unit: z.string(),
  runs: z
    .array(
      z.strictObject({
        test: z.string(),
        recording: z.string(),
        figure: z.string().describe("The figure, as test/of#id"),
        value: z.number(),
        low: z.number().nullable(),
        high: z.number().nullable(),
      }),
    )
    .describe("One value a recording"),
  figures: z.array(figure).describe("Its spread from connection to connection, and from test to test"),
});
export type Repeats = z.infer<typeof repeats>;

export const chargerResult = z
  .strictObject({
    schemaVersion: z.string(),
    methodVersion: z.string(),
    id: z.string(),
    name: z.string(),
    maker: z.string().nullable(),
    invented: z.boolean(),
    inventedNote: z.string().nullable(),
    price: z.strictObject({ amount: z.number(), currency: z.string(), on: z.string().nullable(), where: z.string().nullable() }).nullable(),
    verdict: z.strictObject({ sentence: z.string(), weight: z.string() }).describe("The first thing a buyer reads"),
    disclosures: disclosure,
    makerAnswer: z
      .strictObject({ toldOn: z.string().nullable(), answeredOn: z.string().nullable(), answer: z.string().nullable() })
      .nullable(),
    modes: z.array(
      z.strictObject({
        id: z.string(),
        name: z.string(),
        stated: z
          .array(z.strictObject({ label: z.string(), words: z.string(), from: z.string() }))
          .describe("All that the maker states of this mode"),
        claims: z.array(judgedClaim).describe("Each claim, judged over the tests of this mode"),
        characteristic: z
          .strictObject({
            letters: z.string().nullable(),
            words: z.string(),
            complete: z.boolean(),
            test: z.string().describe("The test whose recording shows most"),
            recording: z.string(),
            stages: z.array(stage).describe("That recording's stages, to draw the characteristic from"),
          })
          .nullable(),
        repeats: z.array(repeats).describe("What every recording of this mode's tests shows of a quantity, and its spread"),
        tests: z.array(z.string()),
      }),
    ),
    figures: z.array(figure),
    findings: z.array(finding),
    tests: z.array(
      z.strictObject({
        id: z.string(),
        title: z.string(),
        mode: z.string(),
        battery: z.string(),
        status: z.string(),
        timeline,
        keyFigures: z.array(figure),
      }),
    ),
    notSeen: z.array(z.string()).describe("What was not recorded, not measured or cannot be told, in sentences"),
    prose: proseResult.nullable(),
    corrections: z.array(
      z.strictObject({
        on: z.string(),
        kind: z.string(),
        what: z.string(),
        why: z.string(),
        noticedBy: z.string().nullable(),
        changesVerdict: z.boolean(),
      }),
    ),
  })
  .meta({ id: "charger-result", title: "Results of one charger" });
export type ChargerResult = z.infer<typeof chargerResult>;

/** One row of the comparison. */
export const comparisonRow = z.strictObject({
  charger: named.extend({ maker: z.string().nullable() }),
  mode: named,
  test: named,
  battery: z.strictObject({
    id: z.string(),
    name: z.string(),
    nominalVoltageV: z.number(),
    capacityAh: z.number(),
    construction: z.string(),
  }),
  status: z.string(),
  verdict: z.strictObject({ sentence: z.string(), weight: z.string() }),
  claims: z.array(z.strictObject({ id: z.string(), label: z.string(), outcome: z.string() })),
  figures: z.array(figure).describe("claim currents and voltages, hours and connections to target, cost per result, price"),
  characteristic: z.string().nullable(),
  timeline,
  /** A small profile for the row: at most 60 points. */
  profile: z
    .strictObject({ elapsedH: z.array(z.number()), voltageV: z.array(z.number().nullable()), currentA: z.array(z.number().nullable()) })
    .nullable(),
});
export type ComparisonRow = z.infer<typeof comparisonRow>;

export const methodEntry = z.strictObject({
  id: z.string(),
  kind: z.enum(["figure", "finding", "claim", "rule"]),
  label: z.string(),
  unit: z.string(),
  method: z.string(),
  explain: z.string(),
  formula: z.string().nullable(),
  source: z.string(),
  checkedBy: z.array(z.string()).describe("The outside checks that its tests make"),
});
export type MethodEntry = z.infer<typeof methodEntry>;

export const siteIndex = z
  .strictObject({
    schemaVersion: z.string(),
    methodVersion: z.string(),
    toolVersion: z.string(),
    site: z.strictObject({
      title: z.string(),
      tagline: z.string().nullable(),
      language: z.string(),
      baseUrl: z.string().nullable(),
      invented: z.boolean(),
      inventedNote: z.string().nullable(),
      licence: z.string().nullable(),
      operator: disclosure,
      sells: z.boolean().nullable(),
      correctionsPolicy: z.string().nullable(),
    }),
    rules: z.array(
      z.strictObject({ id: z.string(), label: z.string(), value: z.string(), setBy: z.enum(["default", "this site"]), source: z.string() }),
    ),
    rows: z.array(comparisonRow),
    chargers: z.array(named),
    tests: z.array(named),
    methods: z.array(methodEntry),
    pages: z.array(proseResult).describe("The reviewer's own pages: about, policy …"),
    corrections: z.array(
      z.strictObject({
        charger: z.string(),
        on: z.string(),
        kind: z.string(),
        what: z.string(),
        why: z.string(),
        changesVerdict: z.boolean(),
      }),
    ),
    notPublished: z.array(z.strictObject({ what: z.string(), why: z.string() })).describe("What errors kept off the site"),
    inputs: z.array(z.strictObject({ path: z.string(), sha256: z.string(), bytes: z.int() })).describe("Every input file"),
  })
  .meta({ id: "site-index", title: "Index of the site's results" });
export type SiteIndex = z.infer<typeof siteIndex>;

/** All results of a workspace, as the publish stage takes them. */
export type Results = {
  readonly index: SiteIndex;
  readonly tests: readonly TestResult[];
  readonly chargers: readonly ChargerResult[];
};

export { evidence };
