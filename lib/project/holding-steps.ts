/** How a charger holds a battery that it has charged. */
import type { ProgrammeStep } from "./charger-behaviour.ts";
import type { ChargerKnowledge } from "./charger-knowledge.ts";
import type { SeenStage } from "./seen-stages.ts";
import { exactly, type Range, rangeOf, widened } from "./spread.ts";

/**
 * What it does once the limit is over: floats, goes on and off, or nothing that anybody recorded.
 * @param index  place of the first of these steps in the programme
 * @param unknowns  what the recordings leave open is added here
 */
export function holdingSteps(
  floats: readonly SeenStage[],
  onOff: readonly SeenStage[],
  bulkA: Range,
  index: number,
  known: ChargerKnowledge,
  unknowns: string[],
): ProgrammeStep[] {
  if (onOff.length > 0 || known.holding !== undefined) {
    const { wakeBelowV, untilV } = holdingThresholds(onOff, known);
    return [
      { kind: "off", wakeBelowV, wakeTo: index + 1 },
      { kind: "constant-current", currentA: bulkA, untilV, end: {} },
      { kind: "off", wakeBelowV, wakeTo: index + 1 },
    ];
  }
  const voltageV = rangeOf(floats.map(({ stage }) => stage.voltageMeanV ?? Number.NaN));
  if (voltageV === undefined) {
    unknowns.push("no float and no holding was recorded: it is taken to give nothing once it leaves off");
    return [{ kind: "off" }];
  }
  return [{ kind: "float", voltageV: widened(voltageV, 2 * known.standardUncertaintyV), limitA: bulkA, end: {} }];
}

/**
 * Without measured thresholds: a voltage that sinks as an exponential does spends its time near the bottom, which then lies about one
 * standard deviation below the mean; the top is where current was last seen to end, or three above it.
 */
function holdingThresholds(onOff: readonly SeenStage[], known: ChargerKnowledge): { wakeBelowV: Range; untilV: Range } {
  const by = 2 * known.standardUncertaintyV;
  if (known.holding !== undefined)
    return { wakeBelowV: widened(exactly(known.holding.wakeV), by), untilV: widened(exactly(known.holding.stopV), by) };
  const ends = onOff.map(({ stage }) => {
    const meanV = stage.voltageMeanV ?? Number.NaN;
    const spreadV = stage.voltageSpreadV ?? 0;
    return { lowV: meanV - spreadV, highV: meanV + 3 * spreadV };
  });
  return {
    wakeBelowV: widened(rangeOf(ends.map(({ lowV }) => lowV)) ?? exactly(0), by),
    untilV: widened(rangeOf(ends.map(({ highV }) => highV)) ?? exactly(0), by),
  };
}
