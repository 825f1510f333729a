/** Who ended a recording: the charger, the recorder, a person, the mains, or nobody knows. The tail alone seldom tells. */
import type { StopRule } from "../nouns/instrument.ts";
import type { Ender, Stage } from "../nouns/stage.ts";
import type { Ending, MeasuredRecording } from "./recording.ts";

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

/**
 * Judges how a recording ended.
 *
 * A current that falls to nothing inside the recording, after a held voltage, while the battery relaxes, is the charger's doing.
 * Current (or a held voltage) at the last row means that something else ended the recording: the recorder, where its stop rule fits
 * the tail or something later shows the charge going on; a person or the mains, where it ends when they did. Else it is not known.
 * "The recording ended" is never read as "the charger finished".
 */
export function findEnding(recording: MeasuredRecording, facts: EndingFacts): Ending {
  const { trace, stages } = recording;
  const last = stages.at(-1);
  const why: string[] = [];
  if (last === undefined)
    return {
      by: "unknown",
      words: "not known: the log shows no stages",
      why: ["no stage could be found"],
      wouldSettle: "a log with both voltage and current",
    };
  const rule = fittingRule(recording, recording.recorder?.stopRule);
  const endA = last.currentEndA ?? 0;
  const isIdle = last.kind === "rest" || last.kind === "interrupted" || last.kind === "discharge";
  const before = stages
    .slice(0, -1)
    .reverse()
    .find((stage) => stage.kind !== "rest" && stage.kind !== "interrupted");
  const recordingEndMs = recording.startMs === undefined ? undefined : recording.startMs + trace.spanS * 1000;
  const slackMs = Math.max(600_000, 5000 * trace.intervalS);
  const offAtEnd = recordingEndMs !== undefined && facts.offMs !== undefined && Math.abs(facts.offMs - recordingEndMs) <= slackMs;
  const idleStartMs = recording.startMs === undefined ? undefined : recording.startMs + last.startS * 1000;
  const offAtIdle = idleStartMs !== undefined && facts.offMs !== undefined && Math.abs(facts.offMs - idleStartMs) <= slackMs;
  const later = laterEvidence(facts);
  if (facts.seenRecording !== undefined) {
    why.push(`the test record says that ${seenWords[facts.seenRecording]} ended this recording`);
    return { by: facts.seenRecording, words: seenWords[facts.seenRecording], why, wouldSettle: null };
  }

  const meanA = last.currentMeanA ?? 0;
  // Holding between two voltages is an end only where the rows stop in one of its pauses; in one of its charges, current still flows.
  const isInPause = last.kind === "on-off-holding" && endA < 0.5 * meanA;
  if (isInPause && meanA <= keepingFullAPerAh * recording.capacityAh) {
    why.push(last.why, `on average ${meanA.toFixed(3)} A flowed, which only keeps a full battery full`);
    return { by: "charger", words: "the charger, which went over to holding the battery between two voltages", why, wouldSettle: null };
  }
  if (isIdle && before !== undefined) {
    const beforeA = before.currentEndA ?? 0;
    why.push(`the current fell from ${beforeA.toFixed(2)} A to none inside the recording (line ${last.lines[0]})`);
    if (last.voltageStartV !== null && last.voltageEndV !== null && last.voltageEndV < last.voltageStartV)
      why.push(`the battery then relaxed from ${last.voltageStartV.toFixed(2)} to ${last.voltageEndV.toFixed(2)} V`);
    if (facts.seen === "mains" || (offAtIdle && facts.seen !== "charger")) {
      const by = facts.seen === "mains" ? "mains" : "person";
      why.push(by === "mains" ? "the test record says that the mains failed" : "the clamps came off at that time");
      return { by, words: seenWords[by], why, wouldSettle: null };
    }
    const highestA = Math.max(...stages.map((stage) => stage.currentStartA ?? 0));
    const wasFinishing =
      (before.kind === "constant-voltage" || before.kind === "float" || before.kind === "pulses" || before.kind === "drooping") &&
      (before.kind === "pulses" ||
        before.kind === "drooping" ||
        beforeA < Math.max(finishedShare * highestA, finishedShareOfC * recording.capacityAh));
    const restS = last.endS - last.startS;
    if (facts.laterCurrentA !== undefined && facts.laterCurrentA > 0 && later !== undefined) {
      why.push(`${later}, so the charger had only paused`);
      if (rule !== undefined) why.push(rule);
      return { by: "recorder", words: "the recorder, in a pause of the charger", why, wouldSettle: null };
    }
    if (wasFinishing && restS >= Math.max(120, 3 * trace.intervalS)) {
      why.push(
        before.kind === "drooping"
          ? "before that it was near the end of a falling current"
          : "before that it was holding its voltage, with little current left",
      );
      return { by: "charger", words: "the charger", why, wouldSettle: null };
    }
    why.push(
      wasFinishing
        ? "too little of the rest was recorded to see the battery relax"
        : `it fell out of ${labelOf(before)} with ${beforeA.toFixed(2)} A flowing, where no charger ends by design`,
    );
    if (rule !== undefined) why.push(rule);
    return {
      by: "unknown",
      words: "not known: current stopped, but not as a charger stops by design, and whether it had ended or only paused was not seen",
      why,
      wouldSettle: "a note of whether mains or clamps were taken off at that time, or a clamp-meter reading later",
    };
  }

  why.push(
    `at the last row (line ${last.lines[1]}) ${endA.toFixed(2)} A ${Math.abs(endA) < 0.05 ? "was read and the voltage was still held" : "still flowed"}`,
  );
  if (facts.seen === "charger") why.push("the test record says that the charger ended, but the recording does not show it");
  if (later !== undefined) why.push(later);
  if (rule !== undefined) why.push(rule);
  if (facts.followed) why.push("another recording of the same connection follows");
  const offLater = recordingEndMs !== undefined && facts.offMs !== undefined && facts.offMs - recordingEndMs > slackMs;
  if (offLater)
    why.push(`the charger stayed connected for ${((facts.offMs - recordingEndMs) / 3_600_000).toFixed(1)} h after the last row`);
  if (rule === undefined && later === undefined && offAtEnd) {
    why.push("the clamps came off at that time");
    const by: Ender = facts.seen === "mains" ? "mains" : "person";
    return { by, words: seenWords[by], why, wouldSettle: null };
  }
  if (rule !== undefined || facts.followed || (facts.laterCurrentA ?? 0) > 0)
    return {
      by: "recorder",
      words: "the recorder; the charger had not ended by then",
      why,
      wouldSettle: later === undefined ? "a clamp-meter reading before disconnecting, or a recorder that does not stop by itself" : null,
    };
  return {
    by: "unknown",
    words: "not known (the recorder, the mains or a person); the charger had not ended by then",
    why,
    wouldSettle: "the time at which the clamps came off, and the rule by which the recorder stops",
  };
}

/** A current at the end of a stage below this share of the highest is that of a charge that has finished. */
const finishedShare = 0.2;
/** … or below C/50, about the end current of a starter battery at its limit (common practice). */
const finishedShareOfC = 0.02;

/** Mean current that only keeps a battery full, A for each Ah: IEC 62485-2, vented, boost, safety factor included. */
const keepingFullAPerAh = 0.004;

const seenWords: Readonly<Record<Exclude<Ender, "unknown">, string>> = {
  charger: "the charger",
  recorder: "the recorder",
  person: "a person",
  mains: "the mains",
};

function laterEvidence(facts: EndingFacts): string | undefined {
  if (facts.laterCurrentA !== undefined && facts.laterCurrentA > 0)
    return `a clamp meter found ${facts.laterCurrentA} A flowing at a later visit`;
  return facts.laterConnected ? "a later visit found the charger still connected" : undefined;
}

function labelOf(stage: Stage): string {
  return stage.kind === "constant-current" ? "the constant-current stage" : `a stage of the kind ${stage.kind}`;
}

/** Says how the recorder's stop rule fits the recording's tail; undefined where it does not, or there is none. */
function fittingRule({ trace, counts }: MeasuredRecording, rule: StopRule | undefined): string | undefined {
  if (rule === undefined) return undefined;
  const count = trace.elapsedS.length;
  if (rule.afterH !== undefined && Math.abs(trace.spanS / 3600 - rule.afterH) <= Math.max(0.01 * rule.afterH, (2 * trace.intervalS) / 3600))
    return `the recording is ${(trace.spanS / 3600).toFixed(1)} h long, and the recorder stops after ${rule.afterH} h ("${rule.words}")`;
  if (rule.afterRows !== undefined && Math.abs(counts.samples - rule.afterRows) <= Math.max(2, 0.001 * rule.afterRows))
    return `the recording has ${counts.samples} rows, and the recorder stops after ${rule.afterRows} ("${rule.words}")`;
  if (rule.belowCurrentA !== undefined) {
    const forS = rule.forS ?? 0;
    const endS = trace.elapsedS[count - 1] as number;
    let from = count - 1;
    while (from > 0 && (trace.currentsA[from - 1] as number) < rule.belowCurrentA) from--;
    const belowS = endS - (trace.elapsedS[from] as number);
    if (
      (trace.currentsA[count - 1] as number) < rule.belowCurrentA &&
      belowS >= forS - 2 * trace.intervalS &&
      belowS <= forS * 1.5 + 10 * trace.intervalS
    )
      return `for the last ${Math.round(belowS / 60)} min the current was under ${rule.belowCurrentA} A, and there the recorder stops ("${rule.words}")`;
  }
  return undefined;
}
