/** Who ended a recording: the charger, the recorder, a person, the mains, or nobody knows. The tail alone seldom tells. */
import type { StopRule } from "../nouns/instrument.ts";
import { type Ender, isOffBattery, type Stage } from "../nouns/stage.ts";
import type { Ending, MeasuredRecording } from "./recording.ts";
import { finishedCurrentA } from "./stages/battery-scale.ts";

/** What else is known of the time around and after a recording's end. */
export type EndingFacts = {
  /** Clamps off, where somebody saw it, ms. */
  readonly offMs: number | undefined;
  /** What a person saw end the connection. */
  readonly seen: "charger" | "person" | "mains" | undefined;
  /** What a person saw end this very recording. */
  readonly seenRecording: Exclude<Ender, "unknown"> | undefined;
  /** A reading after the recording, in the same connection, found current flowing (A) or the charger connected. */
  readonly laterCurrentA: number | undefined;
  readonly laterConnected: boolean;
  /** Another recording of the same connection follows. */
  readonly followed: boolean;
};

/** A charger that has reached its limit and gives nothing for longer than this has not only paused. Our definition: an hour. */
const longPauseS = 3600;
/** A voltage below this share of the one when the current stopped has clearly fallen. */
const clearFallShare = 0.95;
/** Below this voltage a cell is not being held: floats are 13.2 V of 12 V and above (makers' figures; gel may be 13.1, doubtful). */
const notHeldVPerCell = 2.2;

const words: Readonly<Record<Exclude<Ender, "unknown">, string>> = {
  charger: "the charger",
  recorder: "the recorder",
  person: "a person",
  mains: "the mains",
};

/** A recording's last stages, and how its end stands to what else is known. */
type Tail = {
  readonly recording: MeasuredRecording;
  readonly facts: EndingFacts;
  readonly last: Stage;
  /** The last stage in which something flowed, or the leads were off, before an idle one; undefined where nothing ever flowed. */
  readonly before: Stage | undefined;
  /** How the recorder's stop rule fits, in words. */
  readonly rule: string | undefined;
  /** What a later visit says, in words. */
  readonly later: string | undefined;
  /** Clamps off less the last row, and less the moment the current stopped, ms. */
  readonly offAfterEndMs: number | undefined;
  readonly offAfterIdleMs: number | undefined;
  /** Two moments nearer than this are one, ms. */
  readonly slackMs: number;
};

/**
 * Judges how a recording ended.
 *
 * A current that falls to nothing inside the recording, after a held voltage, while the battery relaxes to where nothing holds it, is
 * the charger's doing. Current (or a held voltage) at the last row means that something else ended the recording: a person or the mains,
 * where it ends when they did; else the recorder, whose log is cut in mid-flow, whether its stop rule fits the tail or nobody knows what
 * stopped it. "The recording ended" is never read as "the charger finished".
 */
export function findEnding(recording: MeasuredRecording, facts: EndingFacts): Ending {
  const last = recording.stages.at(-1);
  if (last === undefined)
    return {
      by: "unknown",
      words: "not known: the log shows no stages",
      why: ["no stage could be found"],
      wouldSettle: "a log with both voltage and current",
    };
  const isIdleAtEnd = isIdle(last) || last.kind === "discharge";
  // Nobody can have seen the charger finish where current flows at the last row; then the log is judged, and the record told.
  const tail = tailOf(recording, facts, last);
  if (facts.seenRecording !== undefined && (facts.seenRecording !== "charger" || isIdleAtEnd))
    return endingByRecord(tail, facts.seenRecording, isIdleAtEnd);
  if (isOffBattery(last)) return endingOffTheBattery(tail);
  return isIdleAtEnd && tail.before !== undefined ? endingWithoutCurrent(tail, tail.before) : endingWithCurrent(tail);
}

/** Whether nothing flows into the battery or out of it. */
const isIdle = ({ kind }: Stage): boolean => kind === "rest" || kind === "interrupted";

function known(by: Exclude<Ender, "unknown">, why: readonly string[]): Ending {
  return { by, words: words[by], why, wouldSettle: null };
}

/** The record names who ended this very recording, and may name another beside: whoever disconnects a charger that has stopped has ended it too. */
function endingByRecord({ facts, offAfterIdleMs, slackMs }: Tail, by: Exclude<Ender, "unknown">, isIdleAtEnd: boolean): Ending {
  const why = [`the test record says that ${words[by]} ended this recording`];
  const named = [by, facts.seen];
  const other = named.find((who) => who === "person" || who === "mains");
  if (isIdleAtEnd && named.includes("charger") && other !== undefined)
    return {
      ...known("charger", [...why, `the test record says that ${words[facts.seen ?? by]} ended the connection`]),
      words: `${words.charger} and ${words[other]}, both by the test record`,
    };
  const cameOffThen = offAfterIdleMs !== undefined && Math.abs(offAfterIdleMs) <= slackMs;
  return by === "charger" && cameOffThen ? endedByBoth([...why, clampsOffThen], "then") : known(by, why);
}

const clampsOffThen = "the clamps came off at that time";

/** The charger stopped, and a person disconnected it: both are told, and what the charger does is not put down to the person. */
function endedByBoth(why: readonly string[], when: "then" | "afterwards"): Ending {
  const person = when === "then" ? "a person took the clamps off at that time" : "a person ended the connection afterwards";
  return { ...known("charger", why), words: `${words.charger}; ${person}` };
}

function tailOf(recording: MeasuredRecording, facts: EndingFacts, last: Stage): Tail {
  const { trace, stages, startMs } = recording;
  const earlier = stages.slice(0, -1).filter((stage) => !isIdle(stage));
  const before = earlier.some(({ kind }) => kind !== "no-battery") ? earlier.at(-1) : undefined;
  const since = (elapsedS: number): number | undefined =>
    startMs === undefined || facts.offMs === undefined ? undefined : facts.offMs - (startMs + elapsedS * 1000);
  return {
    recording,
    facts,
    last,
    before,
    rule: fittingRule(recording, recording.recorder?.stopRule),
    later: laterEvidence(facts),
    offAfterEndMs: since(trace.spanS),
    offAfterIdleMs: since(last.startS),
    // A recorder that writes when something moves may have been silent this long before it was stopped.
    slackMs: 1000 * Math.max(600, 5 * trace.intervalS, 1.1 * trace.gapAboveS),
  };
}

/** What the log shows where `isOffBattery`, as a reason. */
export function tellOffBattery({ kind, lines, why }: Stage): string {
  return kind === "reversed"
    ? `from line ${lines[0]} the leads were the wrong way round: ${why}`
    : `from line ${lines[0]} the recorder was not on the battery: ${why}`;
}

const seenMains = "the test record says that the mains failed";
const seenPerson = `the test record says that ${words.person} ended the connection`;

/** The last rows show no battery, or one the wrong way round: what the charger did by then, and after, was not seen. */
function endingOffTheBattery({ facts, last, offAfterIdleMs, slackMs }: Tail): Ending {
  const why = [tellOffBattery(last)];
  if (facts.seen === "mains") return known("mains", [...why, seenMains]);
  if (facts.seen === "person" && offAfterIdleMs === undefined) return known("person", [...why, seenPerson]);
  if (offAfterIdleMs !== undefined && Math.abs(offAfterIdleMs) <= slackMs) return known("person", [...why, clampsOffThen]);
  return {
    by: "unknown",
    words:
      last.kind === "reversed"
        ? "not known: the leads were the wrong way round at the end"
        : "not known: the leads were off the battery at the end, and nobody noted who took them off",
    why,
    wouldSettle: "the time at which the clamps came off",
  };
}

/** The last rows show no current: the charger stopped, or paused, or something was taken away. */
function endingWithoutCurrent(tail: Tail, before: Stage): Ending {
  const { recording, facts, last, rule, later, offAfterIdleMs, slackMs } = tail;
  const beforeA = before.currentEndA ?? 0;
  const why = [`the current fell from ${beforeA.toFixed(2)} A to none inside the recording (line ${last.lines[0]})`];
  const [startV, endV] = [last.voltageStartV ?? 0, last.voltageEndV ?? 0];
  if (endV < startV) why.push(`the battery then relaxed from ${startV.toFixed(2)} to ${endV.toFixed(2)} V`);
  if (facts.seen === "mains") return known("mains", [...why, seenMains]);
  const cameOffThen = offAfterIdleMs !== undefined && Math.abs(offAfterIdleMs) <= slackMs;
  if (cameOffThen && facts.seen !== "charger")
    return {
      ...known("person", [...why, clampsOffThen]),
      // Both may have been: the clamps' time is noted to the minute, and a charger stops within a second.
      ...(hadFinished(recording, before) ? { words: `${words.person}; the charger was near the end of its charge by then` } : {}),
    };
  const byCharger = (reasons: readonly string[]): Ending => {
    if (cameOffThen) return endedByBoth([...reasons, clampsOffThen], "then");
    return facts.seen === "person" ? endedByBoth([...reasons, seenPerson], "afterwards") : known("charger", reasons);
  };
  if (later !== undefined && (facts.laterCurrentA ?? 0) > 0) {
    const settled = [...why, `${later}, so the charger had only paused`, ...(rule === undefined ? [] : [rule])];
    return { by: "recorder", words: "the recorder, in a pause of the charger", why: settled, wouldSettle: null };
  }
  // A charger that held no voltage before will hold none afterwards; any clear fall then shows the battery let go.
  const heldNone = before.kind === "drooping" || before.kind === "finishing-current";
  const isReleased = endV / recording.cells < notHeldVPerCell || (heldNone && endV < clearFallShare * startV);
  const restS = last.endS - last.startS;
  if (hadFinished(recording, before) && isReleased && restS >= Math.max(120, 3 * recording.trace.intervalS)) {
    why.push(
      before.kind === "drooping" ? "before that it was near the end of a falling current" : "before that it was at the end of its charge",
    );
    return byCharger(why);
  }
  const hadLimit = before.kind === "constant-voltage" || before.kind === "float";
  if (hadLimit && isReleased && restS >= longPauseS)
    return byCharger([...why, `it had reached its limit, and nothing flowed for the ${(restS / 3600).toFixed(1)} h still recorded`]);
  if (!hadFinished(recording, before))
    why.push(`it fell out of ${labelOf(before)} with ${beforeA.toFixed(2)} A flowing, where no charger ends by design`);
  else why.push(`at ${endV.toFixed(2)} V the charger may still wait to hold a lower voltage: too little of the rest was recorded`);
  if (rule !== undefined) why.push(rule);
  return {
    by: "unknown",
    words: "not known: current stopped, but whether the charger had ended, changed over or only paused was not seen",
    why,
    wouldSettle: "a note of whether mains or clamps were taken off at that time, or a clamp-meter reading later",
  };
}

/** Whether the stage before the current stopped was one that chargers end from. */
function hadFinished({ stages, capacityAh }: MeasuredRecording, before: Stage): boolean {
  switch (before.kind) {
    case "pulses":
    case "drooping":
    case "finishing-current":
    case "on-off-holding":
      return true;
    case "constant-voltage":
    case "float": {
      const highestA = Math.max(...stages.map((stage) => stage.currentStartA ?? 0));
      return (before.currentEndA ?? 0) < finishedCurrentA(highestA, capacityAh);
    }
    default:
      return false;
  }
}

/** Current, or a voltage that something holds, at the last row, or a charger that never gave any: whatever ended the recording, it was not the charger. */
function endingWithCurrent(tail: Tail): Ending {
  const { facts, last, rule, later, offAfterEndMs, slackMs } = tail;
  const [shown, stand] = shownAtEnd(last);
  const why = [shown];
  if (facts.seen === "charger" || facts.seenRecording === "charger")
    why.push("the test record says that the charger ended, but the recording does not show it");
  if (later !== undefined) why.push(later);
  if (rule !== undefined) why.push(rule);
  if (facts.followed) why.push("another recording of the same connection follows");
  if (offAfterEndMs !== undefined && offAfterEndMs > slackMs)
    why.push(`the charger stayed connected for ${(offAfterEndMs / 3_600_000).toFixed(1)} h after the last row`);
  const cameOffThen = later === undefined && offAfterEndMs !== undefined && Math.abs(offAfterEndMs) <= slackMs;
  if (cameOffThen) why.push(clampsOffThen);
  if (cameOffThen && rule !== undefined)
    return {
      by: "unknown",
      words: `not known: the clamps came off when the recorder's time was up; ${stand}`,
      why,
      wouldSettle: "a note of whether the recorder was still writing when the clamps came off",
    };
  if (cameOffThen) {
    const by = facts.seen === "mains" ? "mains" : "person";
    return { by, words: `${words[by]}; ${stand}`, why, wouldSettle: null };
  }
  if (rule !== undefined || facts.followed || (facts.laterCurrentA ?? 0) > 0)
    return {
      by: "recorder",
      words: `the recorder; ${stand}`,
      why,
      wouldSettle: later === undefined ? "a clamp-meter reading before disconnecting, or a recorder that does not stop by itself" : null,
    };
  if (offAfterEndMs === undefined) why.push("nobody noted when the clamps came off");
  const wouldSettle = "the time at which the clamps came off, and the rule by which the recorder stops";
  // Somebody saw the connection end, and it may have been then: a recorder that stops by itself leaves the same last row.
  const isPersonUnplaced = facts.seen === "person" && offAfterEndMs === undefined;
  if (facts.seen === "mains" || isPersonUnplaced) {
    const who = isPersonUnplaced ? words.person : words.mains;
    why.push(isPersonUnplaced ? seenPerson : seenMains);
    return { by: "unknown", words: `not known: the recorder by itself, or ${who}; ${stand}`, why, wouldSettle };
  }
  return {
    by: "recorder",
    words: isIdle(last) ? `the recorder; ${stand}` : `the recorder, cut in mid-flow; ${stand}`,
    why: [...why, "nothing says what stopped the recorder: its own rule, its battery, a hand, or the mains if it was fed from them"],
    wouldSettle,
  };
}

/** What the last row shows, and what the charger had come to by then; idle it is only where nothing ever flowed. */
function shownAtEnd(last: Stage): readonly [shown: string, stand: string] {
  if (isIdle(last)) return ["no current flowed in the whole recording", "the charger had given nothing by then"];
  const held = "the charger had gone over to holding by then";
  const row = `at the last row (line ${last.lines[1]})`;
  if (last.kind === "on-off-holding") return [`the charger was holding between two voltages ${row}: ${last.why}`, held];
  const endA = last.currentEndA ?? 0;
  return [
    `${row} ${endA.toFixed(2)} A ${Math.abs(endA) < 0.05 ? "was read and the voltage was still held" : "still flowed"}`,
    last.kind === "float" ? held : "the charger had not ended by then",
  ];
}

function laterEvidence(facts: EndingFacts): string | undefined {
  if (facts.laterCurrentA !== undefined && facts.laterCurrentA > 0)
    return `a clamp meter found ${facts.laterCurrentA} A flowing at a later visit`;
  return facts.laterConnected ? "a later visit found the charger still connected" : undefined;
}

function labelOf(stage: Stage): string {
  return stage.kind === "constant-current" ? "the constant-current stage" : `a stage of the kind ${stage.kind}`;
}

/** A recorder counts its hours and rows better than this; further off, that they are near its rule is chance. Our definition. */
const fitShare = 0.001;

/** Says how the recorder's stop rule fits the recording's tail; undefined where it does not, or there is none. */
function fittingRule({ trace, counts }: MeasuredRecording, rule: StopRule | undefined): string | undefined {
  if (rule === undefined) return undefined;
  const count = trace.elapsedS.length;
  const hours = trace.spanS / 3600;
  if (rule.afterH !== undefined && Math.abs(hours - rule.afterH) <= Math.max(fitShare * rule.afterH, (2 * trace.intervalS) / 3600))
    return `the recording is ${hours.toFixed(1)} h long, and the recorder stops after ${rule.afterH} h ("${rule.words}")`;
  if (rule.afterRows !== undefined && Math.abs(counts.samples - rule.afterRows) <= Math.max(2, fitShare * rule.afterRows))
    return `the recording has ${counts.samples} rows, and the recorder stops after ${rule.afterRows} ("${rule.words}")`;
  if (rule.belowCurrentA !== undefined) {
    const forS = rule.forS ?? 0;
    const endS = trace.elapsedS[count - 1] as number;
    let from = count - 1;
    while (from > 0 && (trace.currentsA[from - 1] as number) < rule.belowCurrentA) from--;
    const belowS = endS - (trace.elapsedS[from] as number);
    const isLow = (trace.currentsA[count - 1] as number) < rule.belowCurrentA;
    if (isLow && belowS >= forS - 2 * trace.intervalS && belowS <= forS * 1.5 + 10 * trace.intervalS)
      return `for the last ${Math.round(belowS / 60)} min the current was under ${rule.belowCurrentA} A, and there the recorder stops ("${rule.words}")`;
  }
  return undefined;
}
