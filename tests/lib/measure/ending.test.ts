import { describe, expect, it } from "vitest";
import { type EndingFacts, findEnding } from "../../../lib/measure/ending.ts";
import type { MeasuredRecording } from "../../../lib/measure/recording.ts";
import type { StopRule } from "../../../lib/nouns/instrument.ts";
import { absorption, benchStartMs, bulk, float, logOf, type Part, plainRecorder, recordingOf, rest, rows } from "./bench.ts";

const nothingKnown: EndingFacts = {
  offMs: undefined,
  seen: undefined,
  seenRecording: undefined,
  laterCurrentA: undefined,
  laterConnected: false,
  followed: false,
};
const offAfter = (hours: number): number => benchStartMs + hours * 3_600_000;

function recorded(parts: readonly Part[], stopRule?: StopRule): MeasuredRecording {
  return recordingOf(logOf(parts), { recorder: stopRule === undefined ? plainRecorder : { ...plainRecorder, stopRule } });
}

/** Absorption that goes on until 0.3 A: what a charger ends by design. */
const whole: readonly Part[] = [bulk, absorption, rest];
const cutInBulk: readonly Part[] = [bulk];
const cutInAbsorption: readonly Part[] = [bulk, absorption];
const cutInFloat: readonly Part[] = [bulk, absorption, float];
/** Current that stops in the middle of the bulk. */
const brokenOff: readonly Part[] = [{ ...bulk, hours: 3 }, rest];
/** A charger that gives nothing, as on a battery that is too flat for it. */
const gaveNothing = (): MeasuredRecording =>
  recordingOf({ s: rows(2000, 10), v: Array(2000).fill(11.2), a: Array(2000).fill(0) }, { recorder: plainRecorder });
const restTooShort: readonly Part[] = [bulk, absorption, { ...rest, hours: 1 / 60 }];

type Case = {
  readonly title: string;
  readonly recording: () => MeasuredRecording;
  readonly facts?: Partial<EndingFacts>;
  readonly by: string;
  readonly words: RegExp;
  readonly why?: RegExp;
};

const cases: readonly Case[] = [
  {
    title: "the charger: current fell to none after a held voltage, and the battery relaxed",
    recording: () => recorded(whole),
    by: "charger",
    words: /^the charger$/,
    why: /relaxed from/,
  },
  {
    title: "the recorder, of a charger that never gave a current and stayed connected: nothing was held, and nothing cut",
    recording: gaveNothing,
    facts: { offMs: offAfter(20) },
    by: "recorder",
    words: /^the recorder; the charger had given nothing by then$/,
    why: /^no current flowed in the whole recording; /,
  },
  {
    title: "the recorder, of a charger that never gave a current, once the leads were on",
    recording: () =>
      recordingOf(
        { s: rows(2000, 10), v: rows(2000, 1).map((row) => (row < 300 ? 0 : 12.4)), a: Array(2000).fill(0) },
        { recorder: plainRecorder },
      ),
    facts: { offMs: offAfter(20) },
    by: "recorder",
    words: /^the recorder; the charger had given nothing by then$/,
  },
  {
    title: "a person, of a charger that never gave a current: the clamps came off at the last row",
    recording: gaveNothing,
    facts: { offMs: offAfter(20_000 / 3600) },
    by: "person",
    words: /^a person; the charger had given nothing by then$/,
  },
  {
    title: "a person: the clamps came off when the current stopped",
    recording: () => recorded(whole),
    facts: { offMs: offAfter(10) },
    by: "person",
    words: /^a person/,
    why: /clamps came off at that time/,
  },
  {
    title: "a person, with a charger near the end of its charge told beside: clamps are noted to the minute",
    recording: () => recorded(whole),
    facts: { offMs: offAfter(10) },
    by: "person",
    words: /^a person; the charger was near the end of its charge by then$/,
  },
  {
    title: "a person alone, where the clamps came off in the middle of the bulk",
    recording: () => recorded(brokenOff),
    facts: { offMs: offAfter(3) },
    by: "person",
    words: /^a person$/,
  },
  {
    title: "both: the log shows that the charger stopped, and the record that a person ended the connection",
    recording: () => recorded(whole),
    facts: { seen: "person", offMs: offAfter(30) },
    by: "charger",
    words: /^the charger; a person ended the connection afterwards$/,
    why: /relaxed from.*a person ended the connection/,
  },
  {
    title: "both: somebody saw the charger stop, and the clamps came off then",
    recording: () => recorded(whole),
    facts: { seen: "charger", offMs: offAfter(10) },
    by: "charger",
    words: /^the charger; a person took the clamps off at that time$/,
    why: /relaxed from.*clamps came off at that time/,
  },
  {
    title: "both, by the record: of this very recording the charger, of the connection a person",
    recording: () => recorded(brokenOff),
    facts: { seenRecording: "charger", seen: "person" },
    by: "charger",
    words: /^the charger and a person, both by the test record$/,
    why: /the charger ended this recording; the test record says that a person ended the connection/,
  },
  {
    title: "both, by the record: of this very recording a person, of the connection the charger",
    recording: () => recorded(whole),
    facts: { seenRecording: "person", seen: "charger" },
    by: "charger",
    words: /^the charger and a person, both by the test record$/,
    why: /a person ended this recording; the test record says that the charger ended the connection/,
  },
  {
    title: "both: the record names the charger for this very recording, and the clamps came off then",
    recording: () => recorded(whole),
    facts: { seenRecording: "charger", offMs: offAfter(10) },
    by: "charger",
    words: /^the charger; a person took the clamps off at that time$/,
  },
  {
    title: "a person alone, where current flowed at the last row: the record's word for the charger is not borne out",
    recording: () => recorded(cutInBulk),
    facts: { seenRecording: "person", seen: "charger" },
    by: "person",
    words: /^a person$/,
  },
  {
    title: "the mains: a person saw them fail",
    recording: () => recorded(brokenOff),
    facts: { seen: "mains" },
    by: "mains",
    words: /^the mains$/,
    why: /mains failed/,
  },
  {
    title: "the recorder, in a pause: a clamp meter found current at a later visit",
    recording: () => recorded(whole),
    facts: { laterCurrentA: 2.1 },
    by: "recorder",
    words: /in a pause of the charger/,
    why: /clamp meter found 2.1 A/,
  },
  {
    title: "the charger: it let go of its limit at C/30, within the usual tail currents, and half an hour of rest shows the battery let go",
    recording: () => recorded([bulk, { hours: 3, v: () => 14.4, a: (h) => 1.9 + 3.1 * Math.exp(-h / 0.8) }, { ...rest, hours: 0.5 }]),
    by: "charger",
    words: /^the charger$/,
  },
  {
    title: "not known: a charger that never gives more than C/40 stopped at its limit with nearly all of it flowing",
    recording: () =>
      recorded([
        { hours: 20, v: (h) => 12.3 + 0.105 * h, a: () => 1.5 },
        { hours: 1, v: () => 14.4, a: (h) => 1.5 - 0.3 * h },
        { ...rest, hours: 0.5 },
      ]),
    by: "unknown",
    words: /^not known: current stopped/,
  },
  {
    title: "not known: the current stopped in the middle of the bulk, where no charger ends",
    recording: () => recorded(brokenOff),
    by: "unknown",
    words: /^not known: current stopped/,
    why: /where no charger ends by design/,
  },
  {
    title: "the recorder: its hours were up, and current flowed at the last row",
    recording: () => recorded(cutInBulk, { words: "five hours a file", afterH: 5 }),
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /stops after 5 h \("five hours a file"\)/,
  },
  {
    title: "the recorder: its rows were full",
    recording: () => recorded(cutInBulk, { words: "300 rows a file", afterRows: 300 }),
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /stops after 300 \("300 rows a file"\)/,
  },
  {
    title: "the recorder: the current had been below its threshold for as long as its rule says",
    recording: () =>
      recorded([bulk, { hours: 4, v: () => 14.4, a: (h) => 0.4 + 4.6 * Math.exp(-h / 0.8) }], {
        words: "below 0.5 A for half an hour",
        belowCurrentA: 0.5,
        forS: 2600,
      }),
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /current was under 0.5 A/,
  },
  {
    title: "the recorder: a clamp meter found current later, though no rule is stated",
    recording: () => recorded(cutInAbsorption),
    facts: { laterCurrentA: 0.4 },
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /clamp meter found 0.4 A/,
  },
  {
    title: "the recorder: another recording of the same connection follows",
    recording: () => recorded(cutInBulk),
    facts: { followed: true },
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /another recording/,
  },
  {
    title: "a person: the clamps came off at the last row",
    recording: () => recorded(cutInFloat),
    facts: { offMs: offAfter(14) },
    by: "person",
    words: /^a person/,
    why: /clamps came off at that time/,
  },
  {
    title: "the recorder, cut in mid-flow: nothing is known of the time after, and that is told",
    recording: () => recorded(cutInAbsorption),
    by: "recorder",
    words: /^the recorder, cut in mid-flow; the charger had not ended by then/,
    why: /still flowed.*nobody noted when the clamps came off.*nothing says what stopped the recorder/,
  },
  {
    title: "the recorder, even where a person noted that the charger ended: the recording does not show it",
    recording: () => recorded(cutInAbsorption),
    facts: { seen: "charger" },
    by: "recorder",
    words: /the charger had not ended by then/,
    why: /the recording does not show it/,
  },
  {
    title: "as a person saw it, where the test record says what ended this very recording",
    recording: () => recorded(cutInBulk),
    facts: { seenRecording: "mains" },
    by: "mains",
    words: /^the mains$/,
    why: /the test record says/,
  },
  {
    title: "not known: the leads were off the battery at the end",
    recording: () => recorded([bulk, absorption, { hours: 1, v: () => 0, a: () => 0 }]),
    by: "unknown",
    words: /leads were off the battery/,
    why: /the recorder was not on the battery/,
  },
  {
    title: "a person: the leads were off the battery at the end, and the clamps came off then",
    recording: () => recorded([bulk, absorption, { hours: 1, v: () => 0, a: () => 0 }]),
    facts: { offMs: offAfter(10) },
    by: "person",
    words: /^a person/,
    why: /clamps came off at that time/,
  },
  {
    title: "a person: the leads were off the battery at the end, and the record says that a person ended the connection",
    recording: () => recorded([bulk, absorption, { hours: 1, v: () => 0, a: () => 0 }]),
    facts: { seen: "person" },
    by: "person",
    words: /^a person/,
    why: /a person ended the connection/,
  },
  {
    title: "not known, and not off the battery either: the leads were the wrong way round at the end",
    recording: () => recorded([bulk, absorption, { hours: 1, v: () => -12.6, a: () => 0 }]),
    by: "unknown",
    words: /^not known: the leads were the wrong way round/,
    why: /^from line \d+ the leads were the wrong way round/,
  },
  {
    title: "not known: the record says that the mains failed, and the log ends with current flowing long before the clamps came off",
    recording: () => recorded(cutInAbsorption),
    facts: { seen: "mains", offMs: offAfter(60) },
    by: "unknown",
    words: /^not known: the recorder by itself, or the mains; the charger had not ended by then/,
    why: /the mains failed/,
  },
  {
    title: "not known: the record says that a person ended the connection, and nobody noted when",
    recording: () => recorded(cutInAbsorption),
    facts: { seen: "person" },
    by: "unknown",
    words: /^not known: the recorder by itself, or a person; the charger had not ended by then/,
    why: /nobody noted when the clamps came off.*a person ended the connection/,
  },
  {
    title: "the recorder, where a person took the clamps off long after the last row",
    recording: () => recorded(cutInAbsorption),
    facts: { seen: "person", offMs: offAfter(60) },
    by: "recorder",
    words: /^the recorder, cut in mid-flow/,
  },
  {
    title: "not known: the clamps came off just when the recorder's hours were up",
    recording: () => recorded(cutInFloat, { words: "14 h a file", afterH: 14 }),
    facts: { offMs: offAfter(14) },
    by: "unknown",
    words: /the clamps came off when the recorder's time was up/,
    why: /stops after 14 h.*clamps came off at that time/,
  },
  {
    title: "a person, where the hours of the recorder's rule are only nearly up",
    recording: () => recorded(cutInFloat, { words: "14 h 6 min a file", afterH: 14.1 }),
    facts: { offMs: offAfter(14) },
    by: "person",
    words: /^a person/,
  },
  {
    title: "not known: the log shows no stages",
    recording: () => recordingOf({ s: [0, 60, 120], v: [13, 13, 13] }),
    by: "unknown",
    words: /shows no stages/,
  },
];

describe("who ended a recording", () => {
  it.each(cases)("$title", ({ recording, facts, by, words, why }) => {
    const ending = findEnding(recording(), { ...nothingKnown, ...facts });
    expect(ending.words).toMatch(words);
    expect(ending.by).toBe(by);
    if (why !== undefined) expect(ending.why.join("; ")).toMatch(why);
  });

  it("is not the charger where too little of the rest was recorded to see the battery relax", () => {
    expect(findEnding(recorded(restTooShort), nothingKnown).by).not.toBe("charger");
  });

  it("says what would settle it wherever it is not known", () => {
    for (const { recording, facts, by } of cases)
      if (by === "unknown") expect(findEnding(recording(), { ...nothingKnown, ...facts }).wouldSettle).not.toBeNull();
  });
});

describe("a recording that ends with current flowing", () => {
  const known: readonly Partial<EndingFacts>[] = [
    {},
    { seen: "charger" },
    { seen: "person" },
    { seen: "mains" },
    { offMs: offAfter(0) },
    { offMs: offAfter(5) },
    { offMs: offAfter(10) },
    { offMs: offAfter(14) },
    { offMs: offAfter(60) },
    { laterCurrentA: 1 },
    { laterConnected: true },
    { followed: true },
  ];
  const rules: readonly (StopRule | undefined)[] = [
    undefined,
    { words: "ten hours", afterH: 10 },
    { words: "below 1 A", belowCurrentA: 1 },
  ];

  it.each([
    ["in the bulk", cutInBulk],
    ["in the absorption", cutInAbsorption],
    ["in the float", cutInFloat],
  ] as const)("%s is never said to have been ended by the charger, whatever else is known", (_, parts) => {
    for (const rule of rules)
      for (const facts of known) expect(findEnding(recorded(parts, rule), { ...nothingKnown, ...facts }).by).not.toBe("charger");
  });
});
