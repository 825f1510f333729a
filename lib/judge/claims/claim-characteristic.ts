import { hoursOf, longHoldH } from "../../measure/long-hold.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import { whyNoStages } from "./shared.ts";

const subject = { id: "claim-characteristic", label: "Charge characteristic", unit: "" };

/**
 * Judges the characteristic the maker names against what recordings of the test show.
 *
 * The recording that shows most is taken. Where the recording ended before the charger did, what was seen may only be the beginning:
 * a claim that goes on where the recording stops cannot be told.
 *
 * @returns undefined where the mode claims none
 */
export function judgeCharacteristic(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.characteristic;
  if (claim === undefined) return undefined;
  const seen = context.connections
    .flatMap((connection) => connection.recordings.map((recording, place) => ({ recording, ending: connection.endings[place] })))
    .filter(({ recording }) => recording.characteristic.letters !== null)
    .sort((a, b) => (b.recording.characteristic.letters ?? "").length - (a.recording.characteristic.letters ?? "").length)[0];
  const common = {
    ...subject,
    claimed: null,
    claimedWords: claim.words ?? claim.value,
    claimedFrom: claim.from,
    acceptLow: null,
    acceptHigh: null,
    measured: null,
    low: null,
    high: null,
    probability: null,
    rule: "letters of DIN 41772, compared stage by stage",
    figure: null,
    doubts: [],
  };
  const letters = seen?.recording.characteristic.letters ?? null;
  if (seen === undefined || letters === null)
    return {
      ...common,
      measuredWords: null,
      outcome: "not put to the test",
      why: whyNoStages(context) ?? "no recording shows a charge",
      wouldSettle: "a recording of a whole charge, voltage and current",
    };
  const isComplete = seen.ending?.by === "charger";
  const shown = `${letters} (${seen.recording.characteristic.words}) in ${seen.recording.id}`;
  const held = { ...common, measuredWords: letters };
  if (letters === claim.value || letters === `${claim.value}a`)
    return {
      ...held,
      outcome: "meets",
      why: `the recording shows ${shown}`,
      wouldSettle: null,
      doubts: isComplete || letters.includes("o") ? [] : ["the recording ended before the charger did; a further stage may follow"],
    };
  const longest = seen.recording.stages.findLast((stage) => stage.kind === "constant-voltage" && hoursOf(stage) >= longHoldH);
  if (!isComplete && claim.value.startsWith(letters) && longest !== undefined)
    return {
      ...held,
      outcome: "short of",
      why: `the maker names ${claim.value}; the recording shows ${shown}, and the limit was held for ${hoursOf(longest).toFixed(0)} h without a change-over`,
      wouldSettle: null,
    };
  if (!isComplete && claim.value.startsWith(letters))
    return {
      ...held,
      outcome: "cannot tell",
      why: `the recording shows ${shown}, and ended before the charger did`,
      wouldSettle: "a recording that goes on until the charger stops or holds",
    };
  if (claim.value.includes(letters) && !claim.value.startsWith(letters))
    return {
      ...held,
      outcome: "cannot tell",
      why: `the recording shows ${shown}: it began late, or the battery was too full to show the beginning`,
      wouldSettle: "a recording from the first minute of a charge on a well discharged battery",
    };
  return { ...held, outcome: "short of", why: `the maker names ${claim.value}; the recording shows ${shown}`, wouldSettle: null };
}
