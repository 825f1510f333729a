/** What a voltage that is stated for 25 °C means at the temperature which the battery had. */
import { compensatedVoltageV } from "../electrochem/compensation.ts";
import { describeTemperature } from "../measure/battery-temperature.ts";
import type { BatteryTemperature } from "../measure/span-temperature.ts";
import type { CompensationRule } from "../nouns/rules.ts";

/** By how much the voltage moves, V of the whole battery: at least and at most, over the temperature's interval and the slopes allowed. */
export type VoltageShift = { readonly lowV: number; readonly highV: number };

/**
 * How far a charge voltage moves from the one stated for 25 °C.
 * @returns V of the battery, positive in the cold; the ends belong to the corners of temperature and slope, since between them it is linear
 */
export function shiftAt(cells: number, { lowC, highC }: BatteryTemperature, rule: CompensationRule): VoltageShift {
  const shifts = [lowC, highC].flatMap((temperatureC) =>
    [rule.leastMVPerKPerCell, rule.mostMVPerKPerCell].map((slopeMV) =>
      compensatedVoltageV(0, temperatureC, cells, slopeMV / 1000, { low: rule.fromC, high: rule.toC }),
    ),
  );
  return { lowV: Math.min(...shifts), highV: Math.max(...shifts) };
}

/** The middle of a shift, and the standard uncertainty of not knowing where between its ends it is (rectangular; JCGM 100, 4.3.7). */
export function middleOf({ lowV, highV }: VoltageShift): { shiftV: number; standardUncertainty: number } {
  return { shiftV: (lowV + highV) / 2, standardUncertainty: (highV - lowV) / 2 / Math.sqrt(3) };
}

/** Temperatures at which hardly anybody would speak of cold or heat, °C; the rule of thumb is told only outside them. */
const ordinaryC = { low: 15, high: 32 } as const;

/** The trade's rule of thumb: 0.3 V more for a 12 V battery near 0 °C than at 25 °C (common practice). */
const ruleOfThumb: CompensationRule = { leastMVPerKPerCell: -2, mostMVPerKPerCell: -2, fromC: 0, toC: 40 };

/**
 * What the temperature means for a voltage, in words: the shift and, in cold or heat, the rule of thumb's beside it.
 * @param statedFor  the temperature that the voltage is stated for, such as "25 °C"
 */
export function describeShift(
  cells: number,
  temperature: BatteryTemperature,
  rule: CompensationRule,
  { lowV, highV }: VoltageShift,
  statedFor: string,
): string {
  const slopes =
    rule.leastMVPerKPerCell === rule.mostMVPerKPerCell
      ? `${rule.mostMVPerKPerCell}`
      : `${rule.leastMVPerKPerCell} to ${rule.mostMVPerKPerCell}`;
  const told = `with the battery at ${describeTemperature(temperature)}, ${slopes} mV/K a cell move a voltage stated for ${statedFor} by ${signed(lowV)} to ${signed(highV)} V`;
  const middleC = (temperature.lowC + temperature.highC) / 2;
  const isOrdinary = middleC >= ordinaryC.low && middleC <= ordinaryC.high;
  if (isOrdinary) return told;
  const thumb = middleOf(shiftAt(cells, temperature, ruleOfThumb)).shiftV;
  return `${told}; the trade's rule of thumb (0.3 V more for 12 V near 0 °C, common practice) would make it about ${signed(thumb)} V`;
}

function signed(valueV: number): string {
  return `${valueV < 0 ? "−" : "+"}${Math.abs(valueV).toFixed(2)}`;
}
