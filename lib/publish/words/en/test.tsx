/** The page of one test: its cross-examination, connections, recordings, stages and readings. */
import type { ComponentChildren } from "preact";
import { oneOrMany } from "../plural.ts";
import type { Wrap } from "../slot.ts";

export const test = {
  statuses: {
    reached: "The target density was reached",
    "not reached": "The target density has not been reached",
    "not known": "Whether the target density was reached is not known",
    abandoned: "The test was given up before the target",
    "no target": "No target density was set",
  },
  sections: {
    findings: "Findings",
    witnesses: "Cross-examination",
    figures: "Figures",
    density: "Acid density",
    connections: "Connections",
    recordings: "Recordings",
    readings: "Readings",
    claims: "Claims",
    doubts: "Doubts",
    conditions: "How it was tested",
    downloads: "Downloads",
  },
  description: (charger: string, mode: string, battery: string, status: string) =>
    `${charger}, ${mode}, on ${battery}: ${status.toLowerCase()}.`,
  onBattery: (charger: ComponentChildren, mode: string, battery: string) => (
    <>
      {charger}, mode “{mode}”, on {battery}
    </>
  ),
  targetAt25C: (density: string) => `${density} kg/l at 25 °C`,
  witnessesHeading: "Do the witnesses agree?",
  figuresHeading: "Figures of the whole test",
  figuresCaption: "Each with its interval, method and evidence",
  nothingRecorded: "Nothing was recorded; only readings were taken.",
  claimsCaption: "Claims judged by this test",
  noDoubts: "The checks raised no doubts about this test's files.",
  reachedBy: "Counted as reached by:",
  ruleInNumbers: "the rule in numbers",
  stopNumbers: (readings: number, within: string, apart: string) => ` (${readings} readings equal within ${within}, ${apart} apart)`,
  sealed: "The battery is sealed, so its acid cannot be reached.",
  noDensity: "No density was read.",
  densityCaption: "Acid density at 25 °C",
  densityNote: (readings: Wrap) => (
    <>
      Diamonds are readings with their 95 % intervals; the dotted line only joins them, nobody looked in between. The values stand under{" "}
      {readings("Readings")}.
    </>
  ),
  connections: {
    caption: "Connections, from clamps on to clamps off",
    columns: { connection: "Connection", on: "On", off: "Off", ended: "How it ended", recordings: "Recordings", note: "Note" },
    notSeen: "not seen",
    nothingRecorded: "nothing recorded",
    figures: "Figures of each connection",
    name: (number: number) => `Connection ${number}`,
  },
  leftOut: "Left out, and why",
  battery: (name: string) => `Battery: ${name}`,
  revisions: "Revisions",
  noRevisions: "None since publication.",
  noticedBy: (name: string) => `; noticed by ${name}`,
  downloads: {
    everything: "Everything of this test in one file, zip",
    everythingNote: ": results, records and raw files, with which every figure can be rebuilt.",
    json: "All results of this test, JSON",
    csv: "All figures of this test, CSV",
    sums: (command: ComponentChildren) => (
      <>
        : run {command} beside it to see that no raw file has changed since. It shows that the files are the same, not that a reading was
        right.
      </>
    ),
    caption: "Files as they were handed in",
    columns: { file: "File", what: "What it is", size: "Size" },
  },

  recording: {
    fromTo: (start: string, end: string) => `${start} to ${end}`,
    rawFile: "raw file",
    lettersMayGoOn: "The recording ended before the charger did, so the letters may go on.",
    noSamples: "There are no samples to draw.",
    numbers: "Numbers and shading are the stages of the table below",
    gapsDrawn: "; dotted boxes are gaps in the log, never bridged",
    drawn: "Drawn:",
    figures: (recording: string) => `Figures of ${recording}`,
    endedBy: "Recording ended by:",
    notTheEnd: "Its end is not the end of the charge.",
    gaps: "Gaps in the log:",
    gap: (length: string, from: string, first: number, last: number) => `${length} from ${from} (lines ${first}–${last})`,
    readAs: "How this file was read",
    rows: (lines: string, samples: string, blank: number, excluded: number, empty: number) =>
      `${lines} lines: ${samples} samples, ${blank} blank, ${excluded} excluded, ${empty} without values.`,
    readBack: "Read back:",
  },

  stages: {
    none: "No stages were found in this recording.",
    caption: (recording: string) => `Stages of ${recording}`,
    columns: {
      stage: "Stage",
      from: "From",
      lasts: "Lasts",
      voltage: "Voltage",
      current: "Current",
      charge: "Charge, energy",
      limitedBy: "Current limited by",
      why: "Why",
    },
    letter: (letter: string) => `letter ${letter} · `,
    spread: (spread: string) => `, spread ${spread}`,
    taper: (level: string, tau: string, interval: string, end: string, toCome: string) =>
      `Current falls towards ${level} with a time constant of ${tau} (${interval}); at the end of the stage ${end} flowed, and about ${toCome} above that level were still to come.`,
    noTaper: "No time constant:",
  },

  readings: {
    none: "No readings were taken.",
    caption: "Readings, one visit a row",
    visit: "Visit",
    noted: "Noted",
    evidence: "Evidence",
    before: (connections: number) => `${connections} ${oneOrMany(connections, "connection", "connections")} before`,
    charger: { connected: "Charger connected on arrival.", disconnected: "Charger disconnected on arrival." },
    mixed: "Acid mixed before reading.",
    notMixed: "Acid not mixed before reading.",
  },

  examination: {
    notExamined: "The readings could not be held against each other:",
    model: (how: Wrap) => <>A model weighs all readings together: {how("how, with every assumption")}.</>,
    chart: "How full the battery was, by each witness alone and by all together",
    chartNote:
      "Each with its 95 % interval. Where the marks of one visit stand apart, the witnesses disagree, and the explanations below say why.",
    inWords: "In words",
    cannotShow: "What these witnesses cannot show",
    assumed: "Taken for want of a record",
    sideBySide: "The witnesses side by side: how full, %, with 95 % intervals",
    columns: { visit: "Visit", together: "All together", top: "Top of the acid below the mean", topShort: "Top below mean" },
    visit: (number: number) => `Visit ${number}`,
    causes: "What would explain it",
    causeColumns: { explanation: "Explanation", meaning: "What it means", before: "Before the readings", after: "After them" },
    between: "Charge between the visits, with 95 % intervals",
    betweenColumns: {
      between: "Between",
      taken: "The plates took",
      unrecorded: "Nobody recorded",
      gas: "Share that went into gas",
      gasShort: "Into gas",
    },
    visits: (from: number, to: number) => `Visits ${from} and ${to}`,
    noCharge: "no charge passed",
    noFurther: "No single further reading would tell the explanations apart any better.",
    bits: (bits: string) => `(${bits} bit expected)`,
  },
};
