/**
 * An invented set of results that holds every case a page can meet: all outcomes, all kinds of absence, a sealed battery,
 * a recording that the recorder ended, an end that nobody saw, gaps, pulses, corrections, long names, and words that try to be markup.
 */
import { createHash } from "node:crypto";
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type AbsenceKind, absenceKinds, type Figure } from "../../lib/nouns/figure.ts";
import type { Finding, JudgedClaim } from "../../lib/nouns/finding.ts";
import type { Stage } from "../../lib/nouns/stage.ts";
import { assembleExamination } from "../../lib/publish/assemble/examination.ts";
import type {
  ChargerResult,
  ComparisonRow,
  ProseResult,
  ReadingResult,
  RecordingResult,
  Results,
  SiteIndex,
  TestResult,
  Timeline,
} from "../../lib/publish/results.ts";
import { crossExamine, type VisitWitness } from "../../lib/reconcile/index.ts";

const sha256Of = (text: string) => createHash("sha256").update(text).digest("hex");

/** Raw files of the fixture, by their path in the invented workspace. */
export const rawFiles: Readonly<Record<string, string>> = {
  "data/tests/lantern-first/logs/night one.csv": "time;voltage;current\n2026-03-02 18:00:00;12,31;5,92\n",
  "data/tests/lantern-first/logs/day-2.csv": "time;voltage;current\n2026-03-04 08:00:00;13,02;4,10\n",
  "data/tests/lantern-first/readings.csv": "at,density_1\n2026-03-02 17:30,1.14\n",
  "data/tests/pebble-agm/logs/run.csv": "s\tV\tA\n0\t12.4\t3.1\n",
};

const download = (path: string) => `raw/${path}`;
const file = (path: string) => ({
  path,
  download: download(path),
  sha256: sha256Of(rawFiles[path] ?? ""),
  bytes: Buffer.byteLength(rawFiles[path] ?? ""),
  what: path.includes("logs/") ? "recording" : "readings",
});
const evidence = (path: string, lines?: [number, number]) => ({
  file: path,
  sha256: sha256Of(rawFiles[path] ?? ""),
  ...(lines ? { lines } : {}),
});

const night = "data/tests/lantern-first/logs/night one.csv";
const day = "data/tests/lantern-first/logs/day-2.csv";
const visits = "data/tests/lantern-first/readings.csv";
const agmRun = "data/tests/pebble-agm/logs/run.csv";

type FigureParts = Partial<Figure> & Pick<Figure, "id" | "label" | "unit">;

/** A measured figure of the whole test with an even interval, unless told otherwise. */
export function figureOf(parts: FigureParts, value?: number, halfWidth?: number): Figure {
  return {
    of: "test",
    value: value ?? null,
    low: value === undefined || halfWidth === undefined ? null : value - halfWidth,
    high: value === undefined || halfWidth === undefined ? null : value + halfWidth,
    basis: "measured",
    method: `${parts.id}/1`,
    evidence: [evidence(night, [2, 2418])],
    absent: null,
    doubts: [],
    ...parts,
  };
}

export function absentFigure(parts: FigureParts, kind: AbsenceKind, why: string): Figure {
  return { ...figureOf({ ...parts, evidence: [] }), absent: { kind, why } };
}

const claim = (parts: Partial<JudgedClaim> & Pick<JudgedClaim, "id" | "label" | "outcome">): JudgedClaim => ({
  unit: "A",
  claimed: null,
  claimedWords: null,
  claimedFrom: "label",
  acceptLow: null,
  acceptHigh: null,
  measured: null,
  low: null,
  high: null,
  measuredWords: null,
  probability: null,
  rule: "guarded: outside the limits by more than the expanded uncertainty",
  why: "The interval lies wholly below the lowest accepted value.",
  wouldSettle: null,
  figure: null,
  doubts: [],
  ...parts,
});

const claims: JudgedClaim[] = [
  claim({
    id: "claim-current",
    label: "Current",
    outcome: "short of",
    claimed: 8,
    claimedWords: "8 A DC",
    acceptLow: 7.2,
    acceptHigh: 8.8,
    measured: 5.92,
    low: 5.79,
    high: 6.05,
    probability: 0.0004,
    figure: "recording/night one.csv#sustained-current",
    doubts: ["The clamp meter was last calibrated three years ago."],
  }),
  claim({
    id: "claim-voltage",
    label: "Voltage limit",
    unit: "V",
    outcome: "meets",
    claimed: 14.4,
    acceptLow: 14.112,
    acceptHigh: 14.688,
    measured: 14.42,
    low: 14.39,
    high: 14.45,
    probability: 0.9996,
    why: "The interval lies wholly inside the accepted range.",
    figure: "recording/night one.csv#sustained-voltage",
  }),
  claim({
    id: "claim-float",
    label: "Float voltage",
    unit: "V",
    outcome: "above",
    claimed: 13.6,
    acceptLow: null,
    acceptHigh: 13.872,
    measured: 14.1,
    low: 14.06,
    high: 14.14,
    probability: 0,
    why: "The interval lies wholly above the highest accepted value.",
  }),
  claim({
    id: "claim-characteristic",
    label: "Charge characteristic",
    unit: "",
    outcome: "cannot tell",
    claimedWords: "IUoU",
    claimedFrom: "manual",
    measuredWords: "IU, then the recorder stopped",
    why: "The recording ended before the charger did.",
    wouldSettle: "A recording that lasts until the current has stopped by itself.",
  }),
  claim({
    id: "claim-season",
    label: "May stay connected",
    unit: "",
    outcome: "not put to the test",
    claimedWords: "all winter",
    claimedFrom: "box",
    why: "Nobody left it connected for longer than three days.",
    wouldSettle: "A month on float with the loss of weight before and after.",
  }),
];

const finding = (parts: Partial<Finding> & Pick<Finding, "id" | "subject" | "verdict" | "weight">): Finding => ({
  sentence: "It gives three quarters of the current that its label promises.",
  why: ["5.92 A measured over 60 s against 8 A on the label", "the charger was the limit for 5 h 12 min"],
  wouldSettle: null,
  figures: ["recording/night one.csv#sustained-current"],
  doubts: [],
  ...parts,
});

const findings: Finding[] = [
  finding({ id: "current-delivered", subject: "Charging current", verdict: "short of the label", weight: "bad" }),
  finding({
    id: "stage-order",
    subject: "Order of stages",
    verdict: "constant current, then constant voltage",
    weight: "good",
    sentence: "It charges in the order that its manual names.",
  }),
  finding({
    id: "float-window",
    subject: "Float voltage",
    verdict: "higher than the battery's maker allows",
    weight: "caution",
    sentence: "Left connected it would gas more than it should.",
    doubts: ["Only four hours of float were recorded."],
  }),
  finding({
    id: "target-density",
    subject: "Time to full density",
    verdict: "cannot be told",
    weight: "unsure",
    sentence: "The target was reached between two visits, and the recorder had stopped.",
    wouldSettle: "A visit every four hours near the end.",
    figures: ["test#hours-to-target"],
  }),
  finding({
    id: "battery-kinds",
    subject: "Battery kinds",
    verdict: "AGM not tried",
    weight: "untested",
    sentence: "Only flooded batteries were charged.",
    figures: [],
  }),
  finding({
    id: "cell-spread",
    subject: "Spread between cells",
    verdict: "even",
    weight: "note",
    sentence: "All cells rose together.",
    why: [],
    figures: [],
  }),
];

const timeline: Timeline = {
  start: "2026-03-02T17:30:00+01:00",
  end: "2026-03-08T09:00:00+01:00",
  spanH: 135.5,
  connections: [
    {
      id: "1",
      startH: 0.5,
      endH: 38,
      endKnown: true,
      recorded: [{ startH: 0.5, endH: 14.2, recording: "night one.csv" }],
      endedBy: "person",
    },
    {
      id: "2",
      startH: 38.5,
      endH: 62,
      endKnown: false,
      recorded: [{ startH: 38.5, endH: 46, recording: "day-2.csv" }],
      endedBy: "unknown",
    },
    { id: "3", startH: 90, endH: 131, endKnown: true, recorded: [], endedBy: "mains" },
  ],
  readings: [
    { number: 1, atH: 0, label: "before" },
    { number: 2, atH: 38.2, label: "after connection 1" },
    { number: 3, atH: 88, label: "after connection 2" },
    { number: 4, atH: 135.5, label: "last" },
  ],
  findings: [{ id: "current-delivered", atH: 4, verdict: "short of the label", weight: "bad" }],
  words:
    "Over 5 days 15 hours there were three connections. The first lasted 37.5 h, of which the first 13.7 h were recorded. The second began half an hour later; nobody saw it end. The third lasted 41 h and nothing of it was recorded. Four readings were taken.",
};

const stage = (parts: Partial<Stage> & Pick<Stage, "kind" | "startS" | "endS" | "lines">): Stage => ({
  limitedBy: "charger",
  voltageMeanV: 13.62,
  voltageSpreadV: 0.41,
  voltageStartV: 12.31,
  voltageEndV: 14.4,
  currentMeanA: 5.92,
  currentSpreadA: 0.03,
  currentStartA: 5.95,
  currentEndA: 5.9,
  chargeAh: 30.8,
  energyWh: 419.5,
  taper: null,
  taperRefused: null,
  confidence: "clear",
  why: "The current stays within 0.5 % of its mean while the voltage climbs by 2.1 V.",
  ...parts,
});

/** An invented profile: constant current for five hours, then a taper with a gap, in quarter hours. */
function inventedProfile(hours: number): RecordingResult["profile"] {
  const elapsedH = Array.from({ length: hours * 12 + 1 }, (_, index) => index / 12);
  const inGap = (hour: number) => hour > 9.2 && hour < 10.1;
  return {
    elapsedH,
    voltageV: elapsedH.map((hour) => (inGap(hour) ? null : Number(Math.min(14.42, 12.3 + 0.41 * hour).toFixed(3)))),
    currentA: elapsedH.map((hour) =>
      inGap(hour) ? null : Number((hour < 5.2 ? 5.92 : 0.6 + 5.3 * Math.exp(-(hour - 5.2) / 2.4)).toFixed(3)),
    ),
    thinned: "lowest and highest sample of each of 82 equal stretches; no averages",
  };
}

function recording(parts: Partial<RecordingResult> & Pick<RecordingResult, "id" | "file">): RecordingResult {
  const of = `recording/${parts.id}`;
  return {
    download: download(parts.file),
    sha256: sha256Of(rawFiles[parts.file] ?? ""),
    bytes: Buffer.byteLength(rawFiles[parts.file] ?? ""),
    connection: "1",
    recorder: "bench-recorder",
    start: "2026-03-02T18:00:00+01:00",
    end: "2026-03-03T07:42:00+01:00",
    rows: { lines: 2418, samples: 2410, blank: 2, excluded: 3, empty: 3 },
    readAs: [
      { what: "decimal mark", value: "comma", from: "instrument record" },
      { what: "fields split at", value: "semicolon", from: "detected" },
    ],
    sampleRead: "line 2: 12.31 V and 5.92 A at 2026-03-02 18:00:00",
    figures: [
      figureOf({ id: "charge-recorded", of, label: "Charge recorded", unit: "Ah" }, 47.318, 0.52),
      figureOf({ id: "energy-recorded", of, label: "Energy recorded", unit: "Wh" }, 654.2, 8.1),
      figureOf({ id: "sustained-current", of, label: "Highest sustained current", unit: "A" }, 5.92, 0.13),
      figureOf({ id: "sustained-voltage", of, label: "Highest sustained voltage", unit: "V" }, 14.42, 0.03),
      figureOf({ id: "gap-time", of, label: "Time in gaps", unit: "h" }, 0.9),
      absentFigure(
        { id: "clock-steps-back", of, label: "Clock steps back", unit: "" },
        "not applicable",
        "the log counts from its own start",
      ),
    ],
    stages: [
      stage({ kind: "constant-current", startS: 0, endS: 18720, lines: [2, 1250] }),
      stage({
        kind: "constant-voltage",
        startS: 18720,
        endS: 33120,
        lines: [1251, 2100],
        limitedBy: "battery",
        taper: { tauH: 2.4, tauLowH: 2.31, tauHighH: 2.5, levelA: 0.4, endCurrentA: 0.61, stillToComeAh: 0.5, rmsA: 0.02 },
        why: "The voltage stays within 20 mV of 14.42 V while the current falls from 5.9 A to 1.6 A.",
      }),
      stage({
        kind: "pulses",
        startS: 36360,
        endS: 43200,
        lines: [2101, 2300],
        limitedBy: "unknown",
        confidence: "doubtful",
        taperRefused: "the current goes on and off",
        chargeAh: null,
        energyWh: null,
        voltageMeanV: null,
        why: "On for 40 s and off for 20 s, 114 times.",
      }),
      stage({
        kind: "unexplained",
        startS: 43200,
        endS: 49320,
        lines: [2301, 2418],
        limitedBy: "nobody",
        confidence: "likely",
        why: "Nearest: constant voltage, rest.",
      }),
    ],
    characteristic: { letters: "IU", words: "Constant current, then constant voltage.", complete: false },
    ending: {
      by: "recorder",
      words: "the recorder; the charger had not ended by then",
      why: ["0.8 A at the last row", "below 1 A for 10 min 4 s before it"],
      wouldSettle: "A clamp-meter reading after the recorder stopped.",
    },
    gaps: [{ startS: 33120, endS: 36360, lines: [2100, 2101] }],
    limits: [{ startS: 0, endS: 18720, by: "charger" }],
    profile: inventedProfile(13),
    doubts: [
      {
        id: "gap-in-log",
        place: `${parts.file}:2101:1`,
        found: "54 min without a row",
        expected: "a row every 20 s",
        mend: "nothing can bring the rows back; the gap counts as not recorded",
      },
    ],
    ...parts,
  };
}

function reading(number: number, at: string, atH: number, density: number | undefined): ReadingResult {
  const of = `reading/${number}`;
  const cell = [evidence(visits, [number + 1, number + 1])];
  return {
    number,
    at,
    atH,
    connectionsBefore: number - 1,
    mixed: number === 1 ? null : number > 2,
    charger: number === 2 ? "connected" : null,
    note: number === 2 ? "Current of 1.2 A by the clamp meter although the recorder had long stopped." : null,
    figures: [
      density === undefined
        ? absentFigure({ id: "density-25", of, label: "Mean density at 25 °C", unit: "kg/l" }, "not measured", "the hydrometer was broken")
        : figureOf({ id: "density-25", of, label: "Mean density at 25 °C", unit: "kg/l", evidence: cell }, density, 0.0048),
      figureOf({ id: "rest-voltage", of, label: "Rest voltage", unit: "V", evidence: cell }, 12.1 + number * 0.15, 0.012),
      ...(number === 3
        ? []
        : [figureOf({ id: "acid-temperature", of, label: "Acid temperature", unit: "°C", evidence: cell }, -2.5 + number, 0.6)]),
    ],
  };
}

const testFigures: Figure[] = [
  figureOf({ id: "hours-to-target", label: "Hours to target", unit: "h", low: 38, high: 88 }, 61),
  figureOf({ id: "connections-to-target", label: "Connections to target", unit: "", low: 2, high: 2 }, 2),
  figureOf({ id: "charge-recorded", label: "Charge recorded", unit: "Ah" }, 61.4, 0.71),
  figureOf(
    {
      id: "charge-unrecorded",
      label: "Charge not recorded",
      unit: "Ah",
      basis: "projected",
      doubts: ["Rests on the mass of acid, which is estimated."],
    },
    9.6,
    4.2,
  ),
  figureOf({ id: "cost-per-result", label: "Cost per result", unit: "EUR", basis: "projected", low: 0.92, high: 1.31 }, 1.1),
  ...absenceKinds.map((kind, index) =>
    absentFigure({ id: `absent-${index}`, label: `Something ${kind}`, unit: "V" }, kind, `this shows how “${kind}” looks`),
  ),
];

const disclosures = [
  { label: "How the sample came", value: "bought at retail, new" },
  { label: "Samples tested", value: null },
  { label: "Ties to the maker", value: "none" },
];

const battery = { id: "bench-60", name: "Bench flooded 60 Ah", nominalVoltageV: 12, capacityAh: 60, construction: "flooded-calcium" };

const heard = (number: number, atH: number, density: number, restV: number): VisitWitness => ({
  number,
  atMs: Date.UTC(2026, 2, 2) + atH * 3_600_000,
  densityAt25C: { mean: density, randomStandardUncertainty: 0.0015, commonStandardUncertainty: 0.002 },
  restV: { value: restV, standardUncertainty: 0.005, restH: 8, temperatureC: 20 },
});

/** After one gentle charge voltage says nearly full and the hydrometer does not: acid that was not mixed. */
const examination = assembleExamination(
  crossExamine({
    battery: { cells: 6, construction: "flooded-calcium", capacityAh: 60, capacityBasis: "printed" },
    visits: [heard(1, 0, 1.13, 11.95), heard(2, 30, 1.215, 12.68)],
    intervals: [{ recordedAh: { value: 44, standardUncertainty: 0.5 }, unseenH: { low: 0, high: 0 }, hours: 30 }],
  }),
);

const lanternTest: TestResult = {
  schemaVersion: "1.0",
  methodVersion: "1",
  id: "lantern-first",
  title: "Lantern Eight on a 60 Ah flooded battery",
  invented: true,
  inventedNote: null,
  charger: { id: "lantern-eight", name: "Lantern Eight" },
  mode: { id: "car", name: "CAR 12V" },
  battery: {
    ...battery,
    facts: [
      { label: "Age", value: "two years" },
      { label: "Cranking current", value: null },
    ],
    sealed: false,
  },
  instruments: [
    {
      id: "bench-recorder",
      name: "Bench recorder",
      role: "Recorder",
      facts: [
        { label: "Accuracy, current", value: "±(0.5 % + 2 digits)" },
        { label: "Calibrated", value: null },
      ],
    },
  ],
  facts: [
    { label: "Tester", value: "an invented person" },
    { label: "How discharged", value: "3 A to 10.5 V" },
    { label: "Place", value: null },
  ],
  status: "reached",
  target: { densityAt25C: 1.26, stopRule: "three equal corrected readings 15 min apart", stop: null },
  timeline,
  connections: timeline.connections.map((connection, index) => ({
    id: connection.id,
    number: index + 1,
    on: "2026-03-02T18:00:00+01:00",
    off: connection.endKnown ? "2026-03-04T07:30:00+01:00" : null,
    note: index === 0 ? "Recorder found stopped." : null,
    endedBy: connection.endedBy,
    endedWords: connection.endKnown ? "Clamps taken off at the visit." : "Nobody saw the clamps come off.",
    recordings: connection.recorded.map((stretch) => stretch.recording),
    figures: [figureOf({ id: "time-recorded", of: `connection/${index + 1}`, label: "Time recorded", unit: "h" }, 13.7 - index, 0.1)],
  })),
  recordings: [
    recording({ id: "night one.csv", file: night }),
    recording({
      id: "day-2.csv",
      file: day,
      connection: "2",
      stages: [],
      gaps: [],
      doubts: [],
      profile: { elapsedH: [], voltageV: [], currentA: [], thinned: "Nothing to draw." },
      characteristic: { letters: null, words: "Too few samples to tell.", complete: false },
      ending: { by: "unknown", words: "not known: the log breaks off after one row", why: [], wouldSettle: null },
    }),
  ],
  readings: [
    reading(1, "2026-03-02T17:30:00+01:00", 0, 1.142),
    reading(2, "2026-03-04T07:40:00+01:00", 38.2, 1.218),
    reading(3, "2026-03-06T09:30:00+01:00", 88, undefined),
    reading(4, "2026-03-08T09:00:00+01:00", 135.5, 1.262),
  ],
  figures: testFigures,
  claims,
  examination,
  findings,
  doubts: [
    {
      id: "reading-outside-log",
      place: `${visits}:3:1`,
      found: "a reading 24 h after the last row",
      expected: "a reading inside the log",
      mend: "note who saw the charger",
    },
  ],
  notes: "The shop was unheated.",
  revisions: [{ on: "2026-04-02", what: "Density of visit 2 from 1.228 to 1.218.", why: "a slip of the pen", noticedBy: "a reader" }],
  excluded: [{ what: "night one.csv, lines 7 to 9", why: "the clamp was moved" }],
  files: [file(night), file(day), file(visits)],
};

const sealedTimeline: Timeline = {
  ...timeline,
  spanH: 9,
  connections: [
    { id: "1", startH: 0, endH: 9, endKnown: true, recorded: [{ startH: 0, endH: 9, recording: "run.csv" }], endedBy: "charger" },
  ],
  readings: [],
  findings: [],
  words: "One connection of nine hours, recorded from end to end. No reading was taken.",
};

const pebbleTest: TestResult = {
  ...lanternTest,
  id: "pebble-agm",
  title: "Pebble Trickle-and-Hold Motorcycle Companion on a sealed 9 Ah battery",
  charger: { id: "pebble-trickle", name: "Pebble Trickle-and-Hold Motorcycle Companion with Extra Long Name" },
  mode: { id: "moto", name: "MOTO <6/12 V> & more" },
  battery: { id: "agm-9", name: "Sealed AGM 9 Ah", facts: [], sealed: true, nominalVoltageV: 12, capacityAh: 9, construction: "AGM" },
  instruments: [],
  status: "no target",
  target: null,
  timeline: sealedTimeline,
  connections: [],
  recordings: [
    recording({
      id: "run.csv",
      file: agmRun,
      gaps: [],
      doubts: [],
      characteristic: { letters: "IUoU", words: "Constant current, constant voltage, float.", complete: true },
      ending: {
        by: "charger",
        words: "the charger",
        why: [],
        wouldSettle: null,
      },
    }),
  ],
  readings: [],
  figures: [
    absentFigure(
      { id: "hours-to-target", label: "Hours to target", unit: "h" },
      "not applicable",
      "the battery is sealed, so there is no density to reach",
    ),
  ],
  claims: [],
  examination: assembleExamination({ examined: false, why: "only one visit was made" }),
  findings: [],
  doubts: [],
  notes: null,
  revisions: [],
  excluded: [],
  files: [file(agmRun)],
};

/** Headings are shifted by whoever renders the Markdown: below h2 on a charger's page, below h1 on a page of its own. */
const prose = (id: string, title: string, heading: "h2" | "h3"): ProseResult => ({
  id,
  title,
  language: "en",
  by: "an invented reviewer",
  on: "2026-04-01",
  html: `<p>It hums like a kettle and never quite gets there. See <a href="/method/">how we measure</a>.</p>\n<${heading}>On the bench</${heading}>\n<p>Plainly built; the galvanometer needle would have loved it.</p>`,
  text: "It hums like a kettle and never quite gets there. On the bench. Plainly built; the galvanometer needle would have loved it.",
});

const lantern: ChargerResult = {
  schemaVersion: "1.0",
  methodVersion: "1",
  id: "lantern-eight",
  name: "Lantern Eight",
  maker: "Invented Works",
  invented: true,
  inventedNote: null,
  price: { amount: 49.9, currency: "EUR", on: "2026-02-20", where: "hardware shop" },
  verdict: { sentence: "Charges in the right order, but with three quarters of the current on its label.", weight: "bad" },
  disclosures,
  makerAnswer: { toldOn: "2026-03-20", answeredOn: null, answer: "We thank the shop and will look into the label." },
  modes: [
    {
      id: "car",
      name: "CAR 12V",
      stated: [{ label: "Output", words: "12 V, 8 A DC", from: "label" }],
      claims,
      characteristic: {
        letters: "IU",
        words: "Constant current, then constant voltage.",
        complete: false,
        test: "lantern-first",
        recording: "day-1.csv",
        stages: lanternTest.recordings[0]?.stages ?? [],
      },
      forecast: null,
      leftOnWarning: "It holds 14.10 V, above the float window: left connected it costs water and life.",
      repeats: [
        {
          id: "limit-voltage",
          label: "Voltage held at the limit",
          unit: "V",
          runs: [
            {
              test: "lantern-first",
              recording: "day-1.csv",
              figure: "lantern-first/recording/day-1.csv#limit-voltage",
              value: 14.38,
              low: 14.3,
              high: 14.46,
            },
            {
              test: "lantern-first",
              recording: "day-2.csv",
              figure: "lantern-first/recording/day-2.csv#limit-voltage",
              value: 14.41,
              low: null,
              high: null,
            },
          ],
          figures: [
            figureOf(
              {
                id: "spread-within-tests",
                of: "mode/car/limit-voltage",
                label: "Spread",
                unit: "V",
                low: 0.009,
                high: 0.68,
                doubts: ["from 2 values, so hardly known itself"],
              },
              0.021,
            ),
            absentFigure(
              { id: "spread-between-tests", of: "mode/car/limit-voltage", label: "Spread", unit: "V" },
              "not measured",
              "only one test of this mode recorded it",
            ),
          ],
        },
      ],
      tests: ["lantern-first"],
    },
    { id: "cold", name: "SNOW", stated: [], claims: [], characteristic: null, forecast: null, leftOnWarning: null, repeats: [], tests: [] },
  ],
  figures: [
    figureOf({ id: "price", of: "charger", label: "Price", unit: "EUR", basis: "stated", evidence: [] }, 49.9),
    figureOf(
      {
        id: "cost-per-ah",
        of: "charger",
        label: "Cost per ampere-hour put back",
        unit: "EUR",
        basis: "projected",
        low: 0.015,
        high: 0.024,
      },
      0.019,
    ),
  ],
  findings,
  tests: [
    {
      id: "lantern-first",
      title: lanternTest.title,
      mode: "car",
      battery: battery.name,
      status: "reached",
      timeline,
      keyFigures: testFigures.slice(0, 3),
    },
  ],
  notSeen: [
    "From hour 14 to hour 38 the charger was connected and nothing was recorded.",
    "Whether it holds a float voltage over weeks was not tried.",
  ],
  prose: prose("lantern-eight", "Three quarters of a promise", "h3"),
  corrections: [
    {
      on: "2026-04-02",
      kind: "correction",
      what: "Density after the first connection: 1.228 is now 1.218 kg/l.",
      why: "A slip of the pen.",
      noticedBy: "a reader",
      changesVerdict: false,
    },
  ],
};

const pebble: ChargerResult = {
  ...lantern,
  id: "pebble-trickle",
  name: pebbleTest.charger.name,
  maker: null,
  price: null,
  verdict: { sentence: "Cannot be told yet: one short run on a sealed battery.", weight: "unsure" },
  disclosures: [{ label: "How the sample came", value: null }],
  makerAnswer: null,
  modes: [
    {
      id: "moto",
      name: pebbleTest.mode.name,
      stated: [],
      claims: [],
      characteristic: null,
      forecast: null,
      leftOnWarning: null,
      repeats: [],
      tests: ["pebble-agm"],
    },
  ],
  figures: [],
  findings: [],
  tests: [
    {
      id: "pebble-agm",
      title: pebbleTest.title,
      mode: "moto",
      battery: pebbleTest.battery.name,
      status: "no target",
      timeline: sealedTimeline,
      keyFigures: [],
    },
  ],
  notSeen: [],
  prose: null,
  corrections: [],
};

function row(charger: ChargerResult, test: TestResult, parts: Partial<ComparisonRow>): ComparisonRow {
  const { id, name, nominalVoltageV, capacityAh, construction } = test.battery;
  return {
    charger: { id: charger.id, name: charger.name, maker: charger.maker },
    mode: test.mode,
    test: { id: test.id, name: test.title },
    battery: { id, name, nominalVoltageV, capacityAh, construction },
    status: test.status,
    verdict: charger.verdict,
    claims: test.claims.map(({ id: claimId, label, outcome }) => ({ id: claimId, label, outcome })),
    figures: [
      ...test.figures.slice(0, 2),
      ...test.figures.filter((figure) => figure.id === "cost-per-result"),
      ...charger.figures.filter((figure) => figure.id === "price"),
    ],
    characteristic: "IU",
    timeline: test.timeline,
    profile: {
      elapsedH: [0, 2, 4, 5, 6, 8, 12],
      voltageV: [12.3, 13, 13.8, 14.4, null, 14.4, 14.4],
      currentA: [5.9, 5.9, 5.9, 5.8, null, 1.2, 0.7],
    },
    ...parts,
  };
}

const methods: SiteIndex["methods"] = [
  {
    id: "charge-recorded",
    kind: "figure",
    label: "Charge recorded",
    unit: "Ah",
    method: "charge-recorded/1",
    explain: "Current added up over the time that was recorded.",
    formula: "Q = Σ ½ (I[k] + I[k+1]) (t[k+1] − t[k]) / 3600",
    source: "Definition of the ampere-hour: 1 Ah = 3600 C.",
    checkedBy: ["a steady 5 A over 2 h is 10 Ah"],
  },
  {
    id: "hours-to-target",
    kind: "figure",
    label: "Hours to target",
    unit: "h",
    method: "hours-to-target/1",
    explain: "An interval between the last visit below the target and the first at it.",
    formula: null,
    source: "Definition.",
    checkedBy: [],
  },
  {
    id: "claim-current",
    kind: "claim",
    label: "Current claim",
    unit: "A",
    method: "claim-current/1",
    explain: "Judged only where the charger was the limit.",
    formula: null,
    source: "JCGM 106.",
    checkedBy: [],
  },
  {
    id: "float-window",
    kind: "finding",
    label: "Float window",
    unit: "",
    method: "float-window/1",
    explain: "The voltage held against the window of the battery's kind.",
    formula: null,
    source: "Common practice.",
    checkedBy: [],
  },
  {
    id: "float-window",
    kind: "rule",
    label: "Float window rule",
    unit: "V",
    method: "float-window/1",
    explain: "Two limits a cell.",
    formula: null,
    source: "Common practice.",
    checkedBy: [],
  },
];

/** A second charger on the same evidence, so that the comparison has two rows that cannot be told apart. */
const lanternTwo: ChargerResult = { ...lantern, id: "lantern-two", name: "Lantern Two", prose: null, corrections: [] };

const index: SiteIndex = {
  schemaVersion: "1.0",
  methodVersion: "1",
  toolVersion: "0.1.0",
  site: {
    title: "The Slipway Bench",
    tagline: "Battery chargers, connected until the acid says full, with the evidence for every figure.",
    language: "en",
    languages: ["en"],
    baseUrl: null,
    invented: true,
    inventedNote: null,
    licence: "CC-BY-4.0",
    operator: [
      { label: "Published by", value: "an invented boatyard" },
      { label: "Ties", value: "none" },
      { label: "Contact", value: null },
    ],
    sells: true,
    correctionsPolicy: "Mistakes are mended in the open, with the old value beside the new one.",
  },
  rules: [
    {
      id: "decision",
      label: "Decision rule",
      value: "guarded, guard band equal to the expanded uncertainty",
      setBy: "default",
      source: "JCGM 106:2012",
    },
    { id: "life-uses", label: "Uses over a charger's life", value: "400", setBy: "this site", source: "the site's own record" },
  ],
  rows: [
    row(lantern, lanternTest, {}),
    row(lantern, lanternTest, {
      mode: { id: "cold", name: "SNOW" },
      verdict: { sentence: "Much like the other mode.", weight: "caution" },
      figures: [
        { ...figureOf({ id: "hours-to-target", label: "Hours to target", unit: "h", low: 50, high: null }, 70) },
        absentFigure({ id: "connections-to-target", label: "Connections to target", unit: "" }, "not reached", "the test goes on"),
      ],
      claims: [],
      profile: null,
    }),
    row(lanternTwo, lanternTest, {
      verdict: { sentence: "Much like the other lantern.", weight: "caution" },
      figures: [
        { ...figureOf({ id: "hours-to-target", label: "Hours to target", unit: "h", low: 50, high: null }, 70) },
        absentFigure({ id: "connections-to-target", label: "Connections to target", unit: "" }, "not reached", "the test goes on"),
      ],
      claims: [],
      profile: null,
    }),
    row(pebble, pebbleTest, {
      characteristic: null,
      figures: [...pebbleTest.figures, figureOf({ id: "price", of: "charger", label: "Price", unit: "EUR", basis: "stated" }, 19.5)],
    }),
  ],
  chargers: [lantern, lanternTwo, pebble].map(({ id, name }) => ({ id, name })),
  tests: [lanternTest, pebbleTest].map(({ id, title }) => ({ id, name: title })),
  methods,
  pages: [prose("about", "About this bench", "h2"), prose("policy", "How to quote and to dispute", "h2")],
  corrections: lantern.corrections.map(({ noticedBy: _, ...correction }) => ({ charger: lantern.id, ...correction })),
  notPublished: [{ what: "data/tests/broken", why: "its test.yaml names a battery that does not exist" }],
  inputs: Object.keys(rawFiles).map((path) => ({
    path,
    sha256: sha256Of(rawFiles[path] ?? ""),
    bytes: Buffer.byteLength(rawFiles[path] ?? ""),
  })),
};

/** The whole fixture. */
export const fixture: Results = { index, tests: [lanternTest, pebbleTest], chargers: [lantern, lanternTwo, pebble] };

/** Writes results and raw files as the earlier steps of publishing would. */
export function writeFixture(siteDir: string, results: Results = fixture): void {
  const write = (path: string, text: string) => {
    mkdirSync(dirname(join(siteDir, path)), { recursive: true });
    writeFileSync(join(siteDir, path), text);
  };
  write("data/index.json", JSON.stringify(results.index));
  for (const test of results.tests) write(`data/tests/${test.id}.json`, JSON.stringify(test));
  for (const charger of results.chargers) write(`data/chargers/${charger.id}.json`, JSON.stringify(charger));
  for (const [path, text] of Object.entries(rawFiles)) write(download(path), text);
}
