import { densityFromRestVoltage } from "../../electrochem/rest-voltage.ts";
import { combine, standardUncertaintyOf } from "../../units/uncertainty.ts";
import { type FigureDefinition, notMeasured } from "../define.ts";
import { evidenceOfCell, isSealed, type MeasuredReading, type TestContext } from "../test-context.ts";
import type { Visit } from "../visit.ts";

/** How far a real cell may lie from the polynomial, V a cell: at 25 °C, and more for each K from it (docs/electrochemistry.md). */
const curveErrorV = { at25C: 0.002, perK: 0.000_15 } as const;

/** How far a battery whose temperature nobody read may be from 25 °C, K, and what a K moves its rest voltage, V a cell. */
const unknownTemperature = { halfWidthK: 10, slopeVPerK: 0.000_28 } as const;

/** Rest before a rest voltage is read after a charge, h: IEC 60095-1 (from memory). */
const restByStandardH = 24;

/** A battery comes within 0.05 V (12 V) of its end some 6 to 12 h after a charge: what may be left by then, V a cell and h (common practice). */
const surfaceCharge = { leftV: 0.05 / 6, byH: 6 } as const;

/** By the trade's rule a density is the rest voltage of a cell less this, V. */
const ruleOfThumbV = 0.84;

export const densityByRestVoltage: FigureDefinition<Visit> = {
  id: "density-by-rest-voltage",
  label: "Density at 25 °C by rest voltage",
  unit: "kg/l",
  version: 1,
  explain:
    "The density that the acid at the plates must have for the rest voltage read at this visit, by Bode's curve at the battery's temperature. It needs a battery that has rested, for surface charge reads as strong acid, and evenly mixed acid. For sealed batteries it is not given: their acid is scarcer and stronger, and they rest 0.10 to 0.15 V higher (12 V) at the same state.",
  formula:
    "U/cells = E(m(ρ₂₅), ϑ), solved for ρ₂₅; u(ρ) = u(U)/(dU/dρ); below 24 h of rest the lower end allows for 0.05 V (12 V) of surface charge",
  source: "Bode 1977 (coefficients from memory, checked against two other routes); acid after Myhre 1998.",
  checkedBy: [
    "W055 to W058: 12.70, 12.40, 12.20 and 12.00 V",
    "W059: the error of the rule density + 0.84",
    "Demo visits against the generator's truth",
  ],
  compute: ({ context, reading }) => {
    const restV = reading.values.rest_V?.value;
    if (restV === undefined) return notMeasured("not measured", "no rest voltage was read at this visit");
    const evidence = evidenceOfCell(context, reading, "rest_V");
    if (isSealed(context.battery))
      return notMeasured(
        "not applicable",
        "the battery is sealed: its acid is scarcer and stronger than a vented battery's, and its rest voltage stands 0.10 to 0.15 V higher (12 V), so the curve does not hold",
        evidence,
      );
    const unrested = whyNotRested(context, reading);
    if (unrested !== undefined) return notMeasured("cannot tell", unrested, evidence);
    const temperatureC = batteryTemperatureAt(reading);
    const value = densityFromRestVoltage(restV, context.battery.cells, temperatureC);
    if (Number.isNaN(value))
      return notMeasured(
        "cannot tell",
        `${restV} V at rest, at this temperature, is that of no battery with ${context.battery.cells} whole cells`,
        evidence,
      );
    const accuracy = context.instruments.voltmeter?.measures?.voltage;
    const { cells } = context.battery;
    const u = accuracy === undefined ? undefined : densityUncertainty(restV, cells, temperatureC, standardUncertaintyOf(accuracy, restV));
    const surfaceV = surfaceChargeV(reading);
    const expanded = u === undefined ? undefined : context.rules.coverageFactor * u;
    return {
      value,
      ...(surfaceV === 0 || expanded === undefined
        ? { standardUncertainty: u }
        : {
            interval: {
              low: value - expanded - surfaceV * cells * densityPerV(restV, cells, temperatureC),
              high: value + expanded,
            },
          }),
      evidence,
      doubts: [
        ...(accuracy === undefined ? ["the voltmeter's accuracy is not stated, so no interval is given"] : []),
        ...(temperatureC === undefined ? ["the battery's temperature was not read, so it is taken as 25 °C within 10 K"] : []),
        ...(surfaceV === 0
          ? []
          : [
              `after less than ${restByStandardH} h of rest up to ${(surfaceV * cells).toFixed(2)} V of surface charge may be left, which reads as stronger acid; the lower end of the interval allows for it`,
            ]),
        wordsOfRule(restV / cells, value),
      ],
    };
  },
};

/** Why a rest voltage may not be turned into a density at this visit; undefined where the battery has rested long enough. */
export function whyNotRested(context: TestContext, reading: MeasuredReading): string | undefined {
  const restH = reading.values.rest_h?.value;
  const { leastRestH } = context.rules;
  if (restH === undefined) return "not rested as far as is known: nobody noted for how long the battery had stood";
  return restH < leastRestH
    ? `not rested: ${restH} h of at least ${leastRestH} h, and surface charge reads as strong acid for hours`
    : undefined;
}

/** The battery's own temperature at a visit, °C: air stands for it only after a rest, and is not taken here. */
export function batteryTemperatureAt({ values }: MeasuredReading): number | undefined {
  return values.battery_C?.value ?? values.acid_C?.value;
}

/**
 * Standard uncertainty of a density by rest voltage, kg/l: the meter's, the curve's and the temperature's, over the curve's slope.
 * @param uMeterV  standard uncertainty of the voltmeter, V
 */
function densityUncertainty(restV: number, cells: number, temperatureC: number | undefined, uMeterV: number): number {
  const curveV = curveErrorV.at25C + curveErrorV.perK * Math.abs((temperatureC ?? 25) - 25);
  const temperatureV = temperatureC === undefined ? unknownTemperature.halfWidthK * unknownTemperature.slopeVPerK : 0;
  const uV = combine(uMeterV, (cells * curveV) / Math.sqrt(3), (cells * temperatureV) / Math.sqrt(3));
  return uV * densityPerV(restV, cells, temperatureC);
}

/** Slope of the density against the battery's rest voltage, kg/l per V, by a central difference. */
function densityPerV(restV: number, cells: number, temperatureC: number | undefined): number {
  const stepV = 0.001 * cells;
  return (
    (densityFromRestVoltage(restV + stepV, cells, temperatureC) - densityFromRestVoltage(restV - stepV, cells, temperatureC)) / (2 * stepV)
  );
}

/** Surface charge that may be left after a charge, V a cell: nothing before the first connection, or after a day. */
function surfaceChargeV({ values, connectionsBefore }: MeasuredReading): number {
  const restH = values.rest_h?.value ?? 0;
  if (connectionsBefore === 0 || restH >= restByStandardH) return 0;
  return surfaceCharge.leftV * Math.max(1, surfaceCharge.byH / restH);
}

/** The trade's rule beside ours: what it would say, and how far off that is. */
function wordsOfRule(perCellV: number, densityAt25C: number): string {
  const byRule = perCellV - ruleOfThumbV;
  const difference = byRule - densityAt25C;
  return `the trade's rule "volts a cell less 0.84" would say ${byRule.toFixed(3)} kg/l, ${Math.abs(difference).toFixed(3)} ${difference < 0 ? "less" : "more"}`;
}
