/** The charge characteristic in the letters of DIN 41772: I, U, W, o, a. */
import { type Stage, stageKinds } from "../nouns/stage.ts";

export type Characteristic = {
  /** Such as IUoU; null where no stage has a letter. */
  readonly letters: string | null;
  readonly words: string;
};

/**
 * Spells the characteristic that a recording's stages show.
 *
 * A held voltage after a higher one is a change-over, so it is written "oU"; current falling to none after a charge is "a", a switch
 * to nothing. A break in the middle of the charge has no letter. Source: DIN 41772 as used by trade pages (letters I, U, W, o, a).
 *
 * @param stages  in order; an "a" is written only where the stages end in a rest after a held voltage or a falling current
 */
export function spellCharacteristic(stages: readonly Stage[]): Characteristic {
  const letters: string[] = [];
  const words: string[] = [];
  let isCharging = false;
  stages.forEach((stage, index) => {
    const { letter, label } = stageKinds[stage.kind];
    const isLast = index === stages.length - 1;
    switch (stage.kind) {
      case "constant-current":
      case "drooping":
      case "constant-voltage":
        isCharging = true;
        if (letter !== null && letters.at(-1) !== letter) letters.push(letter);
        words.push(label.toLowerCase());
        return;
      case "float":
        if (letters.at(-1) !== "oU") letters.push("oU");
        words.push("float");
        return;
      case "pulses":
        isCharging = true;
        words.push("pulses");
        return;
      case "rest": {
        const before = stages[index - 1]?.kind;
        const switchedOff =
          isLast && isCharging && (before === "constant-voltage" || before === "float" || before === "drooping" || before === "pulses");
        if (switchedOff) letters.push("a");
        if (switchedOff) words.push("switched off");
        return;
      }
      default:
        return;
    }
  });
  const spelled = letters.join("");
  const distinct = words.filter((word, index) => word !== words[index - 1]);
  return { letters: spelled === "" ? null : spelled, words: distinct.length === 0 ? "no charging seen" : distinct.join(", then ") };
}
