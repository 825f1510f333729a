/** Closed vocabularies of the results, by id: what stands beside a mark, and what an absence is called. */
import type { Outcome, Weight } from "../../../nouns/finding.ts";
import type { Limiter, StageKind } from "../../../nouns/stage.ts";
import { englishAbsences } from "../../../units/absences.ts";

type Named<Id extends string> = Readonly<Record<Id, string>>;

export const marks = {
  outcomes: {
    meets: "meets",
    "short of": "short of",
    above: "above",
    "cannot tell": "cannot tell",
    "not put to the test": "not put to the test",
  } satisfies Named<Outcome> as Named<Outcome>,
  weights: {
    good: "good",
    bad: "bad",
    caution: "caution",
    unsure: "unsure",
    untested: "untested",
    note: "note",
  } satisfies Named<Weight> as Named<Weight>,
  absences: englishAbsences,
  bases: { measured: "measured", projected: "projected", stated: "stated" },
  verdicts: { will: "will", may: "may", "will not": "will not", "not advised": "not advised" },
  /** Where a claim is printed, or who states it. */
  sources: { label: "label", box: "box", manual: "manual", "web page": "web page", seller: "seller" },
  constructions: {
    "flooded-antimony": "flooded-antimony",
    "flooded-calcium": "flooded-calcium",
    flooded: "flooded",
    EFB: "EFB",
    AGM: "AGM",
    gel: "gel",
  },
  /** Whether a test reached its target, in a word. */
  statuses: {
    reached: "reached",
    "not reached": "not reached",
    "not known": "not known",
    abandoned: "abandoned",
    "no target": "no target",
  },
  limiters: {
    charger: "the charger",
    throttle: "the charger, throttling itself",
    battery: "the battery",
    nobody: "nobody",
    unknown: "not known",
  } satisfies Named<Limiter> as Named<Limiter>,
  confidences: { clear: "clear", likely: "likely", doubtful: "doubtful" },
  places: { "cold-shed": "Cold shed", cellar: "Cellar", "warm-garage": "Warm garage" },
  stages: {
    "soft-start": "Soft start",
    "constant-current": "Constant current",
    drooping: "Falling current, rising voltage",
    "constant-voltage": "Constant voltage, current tapering",
    "finishing-current": "Constant current at high voltage",
    throttled: "Throttled current",
    "on-off-holding": "Holding between two voltages",
    float: "Float",
    pulses: "Pulses",
    rest: "Rest",
    interrupted: "Interrupted",
    discharge: "Discharge",
    "no-battery": "No battery at the leads",
    reversed: "Leads the wrong way round",
    unexplained: "Unexplained",
  } satisfies Named<StageKind> as Named<StageKind>,
  /** A label of this table amid a sentence. */
  amid: (label: string) => label.toLowerCase(),
  invented: "invented data",
  /** "A", "A and B", "A, B and C". */
  listed: (words: readonly string[]) => (words.length < 2 ? (words[0] ?? "") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`),
  quoted: (words: string) => `“${words}”`,
  table: (caption: string) => `${caption} (table)`,
};
