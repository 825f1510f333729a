import { batteryTemperature } from "../../measure/battery-temperature.ts";
import { type HeldVoltage, highestHeld } from "../../measure/held-voltage.ts";
import { hoursOf, longHoldH } from "../../measure/long-hold.ts";
import type { TestContext } from "../../measure/test-context.ts";
import type { JudgedClaim } from "../../nouns/finding.ts";
import type { CompensationRule } from "../../nouns/rules.ts";
import type { Stage } from "../../nouns/stage.ts";
import { combine } from "../../units/uncertainty.ts";
import { describeShift, middleOf, shiftAt, type VoltageShift } from "../voltage-at-temperature.ts";
import { type Held, judgeNumber, type NumberClaim, notTested, type Subject, whyNoStages } from "./shared.ts";

const isLimit = (stage: Stage): boolean => stage.kind === "constant-voltage";
const isFloat = (stage: Stage): boolean => stage.kind === "float";
/** A limit that was never left is what the charger holds in place of a float. */
const isLimitNeverLeft = (stage: Stage): boolean => isLimit(stage) && hoursOf(stage) >= longHoldH;

/**
 * Judges the voltage limit: the highest voltage held in any recording of the test, for the temperature that the battery then had.
 *
 * @returns undefined where the mode claims no voltage limit
 */
export function judgeVoltage(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.voltageV;
  const subject = { id: "claim-voltage", label: "Voltage limit", unit: "V" };
  if (claim === undefined) return undefined;
  const held = heldIn(context, isLimit);
  if (held.length === 0)
    return notTested(
      subject,
      claim,
      context.rules.voltageTolerance,
      whyNoStages(context) ?? "no recording reaches a voltage that the charger held",
      "a recording that goes on until the current has begun to fall",
    );
  return judgeHeld(subject, claim, held, context, () => "limit-voltage");
}

/** Judges the voltage held afterwards. @returns undefined where the mode claims none */
export function judgeFloatVoltage(context: TestContext): JudgedClaim | undefined {
  const claim = context.mode.claims.floatVoltageV;
  const subject = { id: "claim-float-voltage", label: "Float voltage", unit: "V" };
  if (claim === undefined) return undefined;
  const floats = heldIn(context, isFloat);
  const held = floats.length > 0 ? floats : heldIn(context, isLimitNeverLeft);
  if (held.length === 0)
    return notTested(
      subject,
      claim,
      context.rules.voltageTolerance,
      whyNoStages(context) ?? "no recording reaches a float",
      "a recording that goes on after the charger has reported full, with a recorder that does not stop by itself",
    );
  return judgeHeld(subject, claim, held, context, ({ stage }) => (isFloat(stage) ? "float-voltage" : "limit-voltage"));
}

function heldIn(context: TestContext, isWanted: (stage: Stage) => boolean): HeldVoltage[] {
  return context.connections
    .flatMap((connection) => connection.recordings)
    .map((recording) => highestHeld(recording, isWanted))
    .filter((held) => held !== undefined);
}

/**
 * Judges the voltage that stands out most from what the claim means at its temperature.
 *
 * Where the maker states how the voltage moves with temperature, the claim moves with it. Where nothing is stated, the claim stands as
 * printed, and a voltage outside it that a compensating charger would hold at that temperature cannot be told.
 */
function judgeHeld(
  subject: Subject,
  claim: NumberClaim,
  held: readonly HeldVoltage[],
  context: TestContext,
  figureOf: (held: HeldVoltage) => string,
): JudgedClaim {
  const stated = context.mode.claims.compensation;
  const rule: CompensationRule =
    stated === undefined
      ? { ...context.rules.compensation, leastMVPerKPerCell: 0 }
      : {
          leastMVPerKPerCell: stated.mVPerKPerCell,
          mostMVPerKPerCell: stated.mVPerKPerCell,
          fromC: stated.fromC,
          toC: stated.toC,
        };
  const placed = held.map((one) => {
    const temperature = batteryTemperature(one.recording, one.stage.startS, one.stage.endS);
    return { ...one, temperature, shift: temperature === undefined ? noShift : shiftAt(context.battery.cells, temperature, rule) };
  });
  const [most] = placed.sort((a, b) => b.valueV - middleOf(b.shift).shiftV - (a.valueV - middleOf(a.shift).shiftV));
  if (most === undefined) throw new Error("judgeHeld was called without a held voltage");
  const seen: Held = {
    value: most.valueV,
    standardUncertainty: most.standardUncertainty,
    figure: `recording/${most.recording.id}#${figureOf(most)}`,
    why: `${most.valueV.toFixed(2)} V was held at the end of a stage of ${hoursOf(most.stage).toFixed(1)} h in ${most.recording.id}`,
    doubts:
      most.temperature === undefined
        ? ["the battery's temperature was not read, so the claim is judged as for 25 °C; a charger that compensates holds more in the cold"]
        : [],
  };
  const { voltageTolerance } = context.rules;
  if (most.temperature === undefined) return judgeNumber(subject, claim, seen, voltageTolerance, context.rules);
  const words = describeShift(context.battery.cells, most.temperature, rule, most.shift, "25 °C");
  if (stated !== undefined) {
    const { shiftV, standardUncertainty } = middleOf(most.shift);
    const withTemperature = {
      ...seen,
      standardUncertainty: seen.standardUncertainty === undefined ? undefined : combine(seen.standardUncertainty, standardUncertainty),
      why: `${seen.why}; ${words}, as the maker states`,
    };
    return judgeNumber(subject, claim, withTemperature, voltageTolerance, context.rules, shiftV);
  }
  return allowForCompensation(
    judgeNumber(
      subject,
      claim,
      { ...seen, why: `${seen.why}, with the battery at ${most.temperature.lowC.toFixed(0)} to ${most.temperature.highC.toFixed(0)} °C` },
      voltageTolerance,
      context.rules,
    ),
    (movedByV) => judgeNumber(subject, claim, seen, voltageTolerance, context.rules, movedByV),
    most.shift,
    words,
  );
}

const noShift: VoltageShift = { lowV: 0, highV: 0 };

/** Turns "above" and "short of" into "cannot tell" where compensation, of which the maker says nothing, would explain the voltage. */
function allowForCompensation(
  asPrinted: JudgedClaim,
  judgeMoved: (movedByV: number) => JudgedClaim,
  shift: VoltageShift,
  words: string,
): JudgedClaim {
  const movedByV = asPrinted.outcome === "above" ? shift.highV : asPrinted.outcome === "short of" ? shift.lowV : 0;
  if (movedByV === 0 || judgeMoved(movedByV).outcome === asPrinted.outcome) return asPrinted;
  return {
    ...asPrinted,
    outcome: "cannot tell",
    probability: null,
    why: `${asPrinted.why}; yet the maker does not say whether the voltage follows the temperature: ${words}, if it does`,
    wouldSettle: "a test with the battery at 25 °C, or the maker's word on compensation",
  };
}
