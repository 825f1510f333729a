/** A charger's behaviour in words, step by step. */
import { type ChargerBehaviour, isHoldingUnknown, type ProgrammeStep, type Range } from "../../project/index.ts";

/** One sentence a step, in the order in which the charger takes them. */
export function tellBehaviour(behaviour: ChargerBehaviour): string[] {
  const { steps, throttle } = behaviour;
  const told = steps.map((step, place) => tellStep(step, place === steps.length - 1));
  if (isHoldingUnknown(behaviour)) told[told.length - 1] = "What it does then nobody recorded; the forecast takes it as off.";
  if (throttle === undefined) return told;
  return [
    ...told,
    `After ${between(throttle.afterH, 1, "h")} at full current it turns down to ${between({ low: 100 * throttle.share.low, high: 100 * throttle.share.high }, 0, "%")} of it for ${between(throttle.forH, 1, "h")}.`,
  ];
}

function tellStep(step: ProgrammeStep, isLast: boolean): string {
  switch (step.kind) {
    case "soft-start":
      return `A low current first, ${between(step.currentA, 2, "A")}${until(step.untilV)}.`;
    case "constant-current":
      return `A current of ${between(step.currentA, 2, "A")}${until(step.untilV)}.`;
    case "finishing-current":
      return `A finishing current of ${between(step.currentA, 2, "A")}${until(step.untilV)}.`;
    case "drooping":
      return `A current that falls from ${between(step.currentAtLowA, 2, "A")} at ${step.lowV.toFixed(2)} V to ${between(step.currentAtHighA, 2, "A")} at ${step.highV.toFixed(2)} V${until(step.untilV)}.`;
    case "constant-voltage":
      return `${between(step.voltageV, 2, "V")} with at most ${between(step.limitA, 2, "A")}${endOf(step.end, isLast)}.`;
    case "float":
      return `Then ${between(step.voltageV, 2, "V")} held, with at most ${between(step.limitA, 2, "A")}.`;
    case "off":
      return step.wakeBelowV === undefined ? "Then off." : `Then off, until the battery has sunk to ${between(step.wakeBelowV, 2, "V")}.`;
  }
}

function until(untilV: Range | undefined): string {
  return untilV === undefined ? "" : `, up to ${between(untilV, 2, "V")}`;
}

function endOf({ belowA, afterH }: { readonly belowA?: Range; readonly afterH?: Range }, isLast: boolean): string {
  const ends = [
    ...(belowA === undefined
      ? []
      : [
          belowA.low === 0
            ? `the current falls below ${belowA.high.toFixed(2)} A, if ever`
            : `the current falls to ${between(belowA, 2, "A")}`,
        ]),
    ...(afterH === undefined ? [] : [`${length(afterH)} have passed`]),
  ];
  if (ends.length === 0) return isLast ? ", and nothing was seen to end it" : "";
  return `, until ${ends.join(" or ")}`;
}

/** Less than six minutes would be no tenth of an hour. */
function length({ low, high }: Range): string {
  return high < 0.1 ? between({ low: 3600 * low, high: 3600 * high }, 0, "s") : between({ low, high }, 1, "h");
}

function between({ low, high }: Range, digits: number, unit: string): string {
  const [from, to] = [low.toFixed(digits), high.toFixed(digits)];
  return from === to ? `${from} ${unit}` : `${from} to ${to} ${unit}`;
}
