/** The charge characteristic in the letters of DIN 41772: I, U, W, o, a. */
import { isOffBattery, type Stage, stageKinds } from "../nouns/stage.ts";

export type Characteristic = {
  /** Such as IUoU; null where no stage has a letter. */
  readonly letters: string | null;
  readonly words: string;
};

/**
 * Spells the characteristic that a recording's stages show.
 *
 * A held voltage after a higher one is a change-over, so it is written "oU". Current falling to none is "a", a switch to nothing, but only
 * where it was the charger that stopped: because the recording's ending says so, or because the charger later woke by itself. What it
 * does after that, topping up, is told in words and has no letters. A break in the middle of a charge has none either.
 * Source: DIN 41772 as used by trade pages (letters I, U, W, o, a).
 *
 * @param stages          in order
 * @param endedByCharger  whether the charger was seen to end the charge inside the recording
 */
export function spellCharacteristic(stages: readonly Stage[], endedByCharger: boolean): Characteristic {
  const letters: string[] = [];
  const words: string[] = [];
  let isCharging = false;
  let hasSwitchedOff = false;
  let topUps = 0;
  stages.forEach((stage, index) => {
    const { letter, label } = stageKinds[stage.kind];
    switch (stage.kind) {
      case "soft-start":
      case "constant-current":
      case "finishing-current":
      case "throttled":
      case "drooping":
      case "constant-voltage":
      case "float":
      case "pulses": {
        if (hasSwitchedOff) {
          if (!isCharging) topUps++;
          isCharging = true;
          return;
        }
        isCharging = true;
        const written = stage.kind === "float" ? "oU" : letter;
        const isSecondLimit =
          stage.kind === "constant-voltage" && letters.at(-1)?.endsWith("U") === true && stages[index - 1]?.kind === "constant-voltage";
        if (isSecondLimit) letters.push("oU");
        else if (written !== null && letters.at(-1) !== written) letters.push(written);
        words.push(label.toLowerCase());
        return;
      }
      case "on-off-holding":
        if (isCharging && !hasSwitchedOff) letters.push("a");
        hasSwitchedOff = true;
        isCharging = false;
        words.push("switched off and held between two voltages");
        return;
      case "rest": {
        // What comes after the leads were off the battery is a charge that a person began.
        const off = stages.findIndex((later, at) => at > index && isOffBattery(later));
        const wakes = stages.slice(index + 1, off < 0 ? undefined : off).some((later) => stageKinds[later.kind].letter !== null);
        if (isCharging && !hasSwitchedOff && (wakes || endedByCharger)) {
          hasSwitchedOff = true;
          letters.push("a");
          words.push("switched off");
        }
        isCharging = false;
        return;
      }
      default:
        return;
    }
  });
  const spelled = letters.join("");
  const distinct = tellTurns(words.filter((word, index) => word !== words[index - 1]));
  if (topUps > 0) distinct.push(topUps === 1 ? "topped up once" : `topped up ${topUps} times`);
  return { letters: spelled === "" ? null : spelled, words: distinct.length === 0 ? "no charging seen" : distinct.join(", then ") };
}

/** From so many entries of two that take turns, they are told once: a throttle that trips all night is one thing to say. */
const fewestTurns = 4;

/** "a, b, a, b, a, c" becomes "a and b in turn, c". Neighbours differ. */
function tellTurns(words: readonly string[]): string[] {
  const told: string[] = [];
  for (let from = 0; from < words.length; ) {
    let to = from + 2;
    while (to < words.length && words[to] === words[to - 2]) to++;
    const isInTurn = to <= words.length && to - from >= fewestTurns;
    told.push(isInTurn ? `${words[from]} and ${words[from + 1]} in turn` : (words[from] ?? ""));
    from = isInTurn ? to : from + 1;
  }
  return told;
}
