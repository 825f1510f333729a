/** From the stages of recorded charges to how the charger behaves; what no record shows stays a range, and is said. */
import type { StageKind } from "../nouns/stage.ts";
import type { ChargerBehaviour, ProgrammeStep } from "./charger-behaviour.ts";
import type { ChargerKnowledge } from "./charger-knowledge.ts";
import { endOf, logSpread, repeated, voltageLevels } from "./end-rules.ts";
import { holdingSteps } from "./holding-steps.ts";
import { type RecordedCharge, type SeenStage, seenStages } from "./seen-stages.ts";
import { exactly, type Range, rangeOf, widened } from "./spread.ts";
import { throttleOf } from "./throttle-of-stages.ts";

export type { ChargerKnowledge } from "./charger-knowledge.ts";
export type { RecordedCharge } from "./seen-stages.ts";

/** Where nothing tells the voltage limit of a 12 V charger, V: what separates the makers' figures (common practice). */
const usualLimitOf12V: Range = { low: 14.1, high: 15 };
/**
 * Derives a charger's behaviour.
 * @param charges  recorded charges; stages without a current or voltage are passed over
 * @returns the programme in the order in which the stages come; undefined where no stage with current was recorded at all
 *
 * What ends the held voltage: where it was seen to end several times, the rule (end current or time) that repeats best; seen once, either.
 * Never seen: somewhere between the last current seen and never; where it was held for days, never.
 */
export function chargerBehaviourOf(charges: readonly RecordedCharge[], known: ChargerKnowledge): ChargerBehaviour | undefined {
  const holds = known.holding !== undefined || charges.some(({ stages }) => stages.some(({ kind }) => kind === "on-off-holding"));
  const seen = charges.flatMap((charge) => seenStages(charge, holds));
  const of = (...kinds: StageKind[]): SeenStage[] => seen.filter(({ stage }) => kinds.includes(stage.kind));
  if (of("constant-current", "drooping", "constant-voltage", "pulses", "finishing-current").length === 0) return undefined;
  const unknowns: string[] = [];
  const steps: ProgrammeStep[] = [];

  const bulkA = bulkCurrent(seen, known, unknowns);
  const softStart = of("soft-start");
  if (softStart.length > 0) steps.push(softStartStep(softStart, known, unknowns));

  const drooping = of("drooping");
  const levels = voltageLevels(charges, holds);
  if (drooping.length > 0) steps.push(droopingStep(drooping, known, levels.length > 0, unknowns));
  else if (levels.length === 0) steps.push(bulkWithoutLimit(bulkStages(seen), bulkA, known, unknowns));

  for (const [index, level] of levels.entries()) {
    const voltageV = widened(
      rangeOf(level.map(({ stage }) => stage.voltageMeanV ?? Number.NaN)) ?? exactly(Number.NaN),
      2 * known.standardUncertaintyV,
    );
    steps.push({ kind: "constant-voltage", voltageV, limitA: bulkA, end: endOf(level, known, index === levels.length - 1, unknowns) });
  }

  const finishing = of("finishing-current");
  if (finishing.length > 0) steps.push(finishingStep(finishing, known));
  const holdsByPulses = bulkStages(seen).some(({ stage }) => stage.kind === "constant-current") ? of("pulses") : [];
  const onOff = [...of("on-off-holding"), ...holdsByPulses];
  const floats = of("float");
  const isLimitHeldForGood = levels.length > 0 && floats.length === 0 && onOff.length === 0 && holdsWithoutEnd(steps.at(-1));
  if (!isLimitHeldForGood || known.holding !== undefined) steps.push(...holdingSteps(floats, onOff, bulkA, steps.length, known, unknowns));
  const throttle = throttleOf(charges, unknowns);
  if (of("interrupted").length > 0 && onOff.length === 0)
    unknowns.push("it paused in the middle of a charge; a forecast lets it go on without a pause");
  if (known.standbyW === undefined) unknowns.push("what it takes from the mains beside what it passes on was not measured");
  return {
    steps,
    ...(throttle === undefined ? {} : { throttle }),
    efficiency: known.efficiency,
    ...(known.standbyW === undefined ? {} : { standbyW: known.standbyW }),
    unknowns,
  };
}

function holdsWithoutEnd(step: ProgrammeStep | undefined): boolean {
  return step?.kind === "constant-voltage" && step.end.belowA === undefined && step.end.afterH === undefined;
}

/** Stages at the full current; pulses stand for it only where it was never held, for after a charge they are a way of holding. */
function bulkStages(seen: readonly SeenStage[]): SeenStage[] {
  const held = seen.filter(({ stage }) => stage.kind === "constant-current");
  return held.length > 0 ? held : seen.filter(({ stage }) => stage.kind === "pulses");
}

function bulkCurrent(seen: readonly SeenStage[], known: ChargerKnowledge, unknowns: string[]): Range {
  const bulk = bulkStages(seen);
  const highestA = Math.max(...bulk.map(({ stage }) => stage.currentMeanA ?? 0));
  // A stage at a much lower current is a second one; it does not tell what the charger can give.
  const full = bulk.filter(({ stage }) => (stage.currentMeanA ?? 0) > 0.85 * highestA);
  const range = rangeOf(full.flatMap(({ stage }) => asList(stage.currentMeanA)));
  if (range !== undefined) return widened(range, 2 * known.standardUncertaintyA, 0);
  const highestSeenA = Math.max(0, ...seen.flatMap(({ stage }) => asList(stage.currentStartA)));
  unknowns.push("its current limit was never reached in a recording");
  return { low: highestSeenA, high: Math.max(highestSeenA, known.claimedCurrentA ?? 2 * highestSeenA) };
}

function softStartStep(stages: readonly SeenStage[], known: ChargerKnowledge, unknowns: string[]): ProgrammeStep {
  const currentA = widened(
    rangeOf(stages.map(({ stage }) => stage.currentMeanA ?? Number.NaN)) ?? exactly(0),
    2 * known.standardUncertaintyA,
    0,
  );
  const ended = stages.filter(({ isEndSeen }) => isEndSeen);
  const untilV = rangeOf(ended.flatMap(({ stage }) => asList(stage.voltageEndV)));
  const afterH = rangeOf(ended.map(({ hours }) => hours));
  if (ended.length < 2) unknowns.push("whether a voltage or a time ends its soft start was not seen often enough");
  const spreadV = untilV === undefined ? 0 : (untilV.high - untilV.low) / untilV.low;
  const byTime = ended.length > 1 && spreadV > 0.03;
  return {
    kind: "soft-start",
    currentA,
    ...(byTime || untilV === undefined ? {} : { untilV: widened(untilV, 2 * known.standardUncertaintyV) }),
    // Whatever ends it, no soft start seen lasted longer than twice the longest.
    end: { afterH: afterH === undefined ? exactly(1) : byTime ? afterH : { low: afterH.high, high: 2 * afterH.high } },
  };
}

function droopingStep(stages: readonly SeenStage[], known: ChargerKnowledge, hasLimit: boolean, unknowns: string[]): ProgrammeStep {
  const lines = stages.flatMap(({ stage }) => {
    const { voltageStartV, voltageEndV, currentStartA, currentEndA } = stage;
    if (voltageStartV === null || voltageEndV === null || currentStartA === null || currentEndA === null) return [];
    return voltageEndV > voltageStartV && currentStartA > currentEndA ? [{ voltageStartV, voltageEndV, currentStartA, currentEndA }] : [];
  });
  const lowV = Math.min(...lines.map((line) => line.voltageStartV));
  const highV = Math.max(...lines.map((line) => line.voltageEndV));
  const currentAt = (voltageV: number): Range => {
    const currents = lines.map((line) => {
      const slope = (line.currentEndA - line.currentStartA) / (line.voltageEndV - line.voltageStartV);
      return line.currentEndA + slope * (voltageV - line.voltageEndV);
    });
    return widened(rangeOf(currents) ?? exactly(0), 2 * known.standardUncertaintyA, 0);
  };
  const ended = stages.filter(({ isEndSeen }) => isEndSeen);
  const untilV = rangeOf(ended.flatMap(({ stage }) => asList(stage.voltageEndV)));
  if (ended.length === 0 && !hasLimit) unknowns.push("nobody recorded what ends its falling current, if anything does");
  return {
    kind: "drooping",
    lowV,
    currentAtLowA: currentAt(lowV),
    highV,
    currentAtHighA: currentAt(highV),
    ...(untilV === undefined ? {} : { untilV: widened(untilV, 2 * known.standardUncertaintyV) }),
    end: {},
  };
}

function bulkWithoutLimit(stages: readonly SeenStage[], currentA: Range, known: ChargerKnowledge, unknowns: string[]): ProgrammeStep {
  const ended = stages.filter(({ isEndSeen }) => isEndSeen);
  const endsV = rangeOf(ended.flatMap(({ stage }) => asList(stage.voltageEndV)));
  if (endsV !== undefined) return { kind: "constant-current", currentA, untilV: widened(endsV, 2 * known.standardUncertaintyV), end: {} };
  unknowns.push("no recording shows its voltage limit: the limit is taken from the label, or from what chargers usually have");
  const highestV = Math.max(...stages.flatMap(({ stage }) => asList(stage.voltageEndV)));
  const usual = known.claimedLimitV === undefined ? scaled(usualLimitOf12V, known.nominalVoltageV / 12) : exactly(known.claimedLimitV);
  const voltageV = { low: Math.max(usual.low, highestV), high: Math.max(usual.high, highestV) };
  return { kind: "constant-voltage", voltageV, limitA: currentA, end: {} };
}

function finishingStep(stages: readonly SeenStage[], known: ChargerKnowledge): ProgrammeStep {
  const ended = stages.filter(({ isEndSeen }) => isEndSeen);
  const currentA = widened(
    rangeOf(stages.map(({ stage }) => stage.currentMeanA ?? Number.NaN)) ?? exactly(0),
    2 * known.standardUncertaintyA,
    0,
  );
  const untilV = rangeOf(ended.flatMap(({ stage }) => asList(stage.voltageEndV)));
  const durations = ended.map(({ hours }) => hours);
  const byTime = durations.length > 1 && logSpread(durations) < 0.1;
  return {
    kind: "finishing-current",
    currentA,
    ...(byTime || untilV === undefined ? {} : { untilV: widened(untilV, 2 * known.standardUncertaintyV) }),
    end:
      durations.length === 0
        ? {}
        : { afterH: byTime ? repeated(durations, 0) : { low: Math.max(...durations), high: 2 * Math.max(...durations) } },
  };
}

function scaled(range: Range, by: number): Range {
  return { low: range.low * by, high: range.high * by };
}

function asList(value: number | null): number[] {
  return value === null ? [] : [value];
}
