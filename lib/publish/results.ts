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
import { interfaceLanguages } from "../nouns/site.ts";
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

/** Ends of an interval that holds the true value with 95 % probability, and its middle. */
const estimate = z.strictObject({ value: z.number(), low: z.number(), high: z.number() });

export const examinationResult = z
  .strictObject({
    examined: z.boolean().describe("false where too little is known to hold the witnesses against each other"),
    why: z.string().nullable().describe("Why they could not be examined; null where they were"),
    buyer: z.array(z.string()).describe("Two plain sentences for a buyer; none where nothing was examined"),
    accounts: z
      .array(
        z.strictObject({
          witness: z.enum(["density", "rest-voltage", "charge-balance", "cranking"]),
          visit: z.int(),
          stateOfCharge: estimate.nullable().describe("0 to 1, by this witness alone; null where it cannot say"),
          why: z.string().describe("How it was reached, or why it was not"),
        }),
      )
      .describe("The four witnesses side by side: one entry a witness and visit"),
    visits: z.array(
      z.strictObject({
        visit: z.int(),
        stateOfCharge: estimate.describe("0 to 1, by all visits together"),
        topBelowMean: estimate.nullable().describe("How much weaker the top of the acid is than the mean, kg/l; null for sealed"),
        meanDensityAt25C: estimate.nullable().describe("Density of the whole cell, top to bottom, kg/l at 25 °C; null for sealed"),
        surfaceChargeV: estimate.nullable().describe("What surface charge adds to the rest voltage, V; null where none was read"),
      }),
    ),
    intervals: z.array(
      z.strictObject({
        fromVisit: z.int(),
        toVisit: z.int(),
        takenAh: estimate.describe("Charge that the plates really took"),
        unrecordedAh: estimate.describe("Charge that nobody recorded"),
        gassingShare: estimate.nullable().describe("Share of the charge that went into gas; null where none passed"),
      }),
    ),
    causes: z
      .array(
        z.strictObject({
          id: z.string(),
          label: z.string(),
          explain: z.string(),
          prior: z.number().describe("Probability before any reading"),
          probability: z.number().describe("Probability after all readings, of this cause alone or with others"),
          hiddenBecause: z.string().nullable().describe("Why no reading could show it; null where one could"),
        }),
      )
      .describe("What would explain a disagreement, most probable first"),
    combinations: z
      .array(z.strictObject({ causes: z.array(z.string()), probability: z.number() }))
      .describe("Causes taken together, most probable first; no cause is 'nothing to explain'"),
    takenAh: estimate.nullable().describe("Charge that the plates really took, first to last visit"),
    unrecordedAh: estimate.nullable().describe("Charge that nobody recorded, first to last visit"),
    hydrometerOffset: estimate.nullable().describe("What the hydrometer shows too much, kg/l"),
    capacityAh: estimate.nullable().describe("What the battery really holds, Ah"),
    statements: z.array(z.string()).describe("For a technician, in order"),
    readings: z
      .array(z.strictObject({ id: z.string(), label: z.string(), expectedBits: z.number(), why: z.string() }))
      .describe("Readings that would tell the explanations apart, best first, with the information expected of each, bit"),
    unseen: z.array(z.string()).describe("What these witnesses cannot show"),
    assumptions: z.array(z.string()).describe("What was taken for want of a record"),
  })
  .meta({ id: "examination", title: "Cross-examination of the battery's witnesses" });
export type ExaminationResult = z.infer<typeof examinationResult>;

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
    status: z.enum(["reached", "not reached", "not known", "abandoned", "no target"]),
    target: z
      .strictObject({
        densityAt25C: z.number(),
        stopRule: z.string().nullable(),
        stop: z
          .strictObject({ equalReadings: z.int(), apartMin: z.number(), withinKgPerL: z.number() })
          .nullable()
          .describe("The stop rule in numbers; null where the test names none"),
      })
      .nullable(),
    timeline,
    connections: z.array(connectionResult),
    recordings: z.array(recordingResult),
    readings: z.array(readingResult),
    figures: z.array(figure).describe("Figures of the test as a whole"),
    claims: z.array(judgedClaim),
    examination: examinationResult,
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

const spread = z
  .strictObject({ value: z.number().nullable(), low: z.number().nullable(), high: z.number().nullable() })
  .describe("The middle of what is forecast and the ends of the middle 95 %; null is 'never within the horizon'");
const range = z.strictObject({ low: z.number(), high: z.number() });

export const modeForecast = z
  .strictObject({
    behaviour: z.looseObject({}).describe("How the charger behaves, as plain data that the forecasting library takes (docs/projection.md)"),
    told: z.array(z.string()).describe("The same in words, step by step"),
    unknowns: z.array(z.string()).describe("What the recordings do not say of it"),
    nominalVoltageV: z.number(),
    claimedAh: range.nullable().describe("The capacities that the maker names"),
    reference: z
      .strictObject({
        words: z.string().describe("The battery and the place"),
        figures: z.array(figure).describe("Hours to 80 %, 95 % and full, and mains energy, projected"),
        drawsKWh: z.array(z.number().nullable()).describe("Energy from the mains until then in the same draws, kWh"),
        pricePerKWh: z
          .strictObject({ amount: z.number(), currency: z.string() })
          .nullable()
          .describe("What a kilowatt-hour costs in the currency of the charger's price; null where either is not stated"),
        drawsH: z
          .array(z.number().nullable())
          .describe(
            "Hours to 95 % in each draw; draw k met the same battery for every charger, so that two can be held against each other",
          ),
      })
      .nullable()
      .describe("The one battery on which all chargers are compared; null for a mode of another voltage"),
    ownBatteries: z
      .array(
        z.strictObject({
          test: z.string(),
          battery: z.string(),
          knownBy: z.int().describe("Logs of its charges that tell of the battery, this test's own among them"),
          figures: z.array(figure).describe("Hours to 80 %, 95 % and full, projected"),
        }),
      )
      .describe("Batteries of the bench once more, each as flat as it was found before a test of this mode"),
    readyBy: z.array(
      z.strictObject({
        construction: z.string(),
        airC: z.number(),
        cells: z.array(
          z.strictObject({
            battery: z.string(),
            flatness: z.string(),
            deadlines: z.array(
              z.strictObject({
                deadlineH: z.number(),
                probability: z.number(),
                verdict: z.enum(["will", "may", "will not", "not advised"]),
              }),
            ),
            because: z.array(z.string()).describe("Why it is not advised"),
            isClaimed: z.enum(["all", "part", "none"]).nullable().describe("Whether the maker's range of capacities holds this class"),
          }),
        ),
      }),
    ),
    season: z.array(
      z.strictObject({
        place: z.string(),
        temperatureC: z.number(),
        mainsKWh: spread.nullable(),
        waterG: spread.nullable(),
        restartsPerDay: spread.nullable(),
        topUpDays: spread.nullable(),
        heldV: range.nullable(),
        windowV: range,
        inWindow: z.enum(["inside", "below", "above", "partly", "holds no voltage", "not known"]),
      }),
    ),
  })
  .meta({ id: "mode-forecast", title: "What a mode will do on other batteries" });
export type ModeForecastResult = z.infer<typeof modeForecast>;

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
        forecast: modeForecast.nullable().describe("null where no recording shows what the mode does"),
        leftOnWarning: z
          .string()
          .nullable()
          .describe("Why it should not stay connected to a full battery, seen before forecast; null where nothing speaks against it"),
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
      languages: z
        .array(z.enum(interfaceLanguages))
        .min(1)
        .describe("Of the pages; the first stands at the root. These results are in English"),
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
