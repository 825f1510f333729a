/** Every row of the density table beside our density. */
import { acidRange, densityOfAcid } from "../../../lib/electrochem/acid.ts";
import { type Check, compare, notComputed } from "../check.ts";
import { field, numberField, readReferenceTable } from "../read-table.ts";

/** What a source may differ by, kg/l, and why. */
type Allowance = {
  readonly begins: string;
  readonly group: string;
  readonly above10: number;
  readonly below10: number;
  readonly reason: string;
};

const allowances: readonly Allowance[] = [
  {
    begins: "CRC",
    group: "CRC, 20 °C",
    above10: 0.0011,
    below10: 0.0002,
    reason: "rests on other data, and lies up to 0.0010 above all other sources at 20 to 30 wt %",
  },
  {
    begins: "Myhre",
    group: "Myhre 1998, sign restored",
    above10: 0.000_005_1,
    below10: 0.000_005_1,
    reason: "the same formula, printed to 0.00001",
  },
  { begins: "water", group: "water", above10: 0.00001, below10: 0.00001, reason: "printed to 0.00001" },
  {
    begins: "Laliberte",
    group: "Laliberté 2009",
    above10: 0.0027,
    below10: 0.0015,
    reason: "a global fit, stated as good to 0.002; it leaves every other source, not only ours",
  },
  {
    begins: "from memory: Perry",
    group: "International Critical Tables (memory)",
    above10: 0.0005,
    below10: 0.00025,
    reason: "worst at 10 wt % and 40 °C, the edge of our formula's range; and it is recalled, not read",
  },
  {
    begins: "linear-in-T",
    group: "linear-in-temperature table",
    above10: 0.0006,
    below10: 0.0006,
    reason: "a straight line in temperature cannot follow the curve",
  },
  {
    begins: "E-AIM",
    group: "E-AIM, 25 °C",
    above10: 0.0001,
    below10: 0.00001,
    reason: "our dilute rows are taken from it; above 10 wt % it is independent",
  },
];

export function checkAcidDensities(): Check[] {
  return readReferenceTable("acid-density/acid-density.csv").map((row, i) => {
    const source = field(row, "source");
    const allowance = allowances.find(({ begins }) => source.startsWith(begins));
    if (allowance === undefined) throw new Error(`no tolerance is given for the source ${source}`);
    const weightFraction = numberField(row, "wt_percent") / 100;
    const temperatureC = numberField(row, "temp_c");
    const check = {
      id: `acid-density/${i + 1}`,
      group: allowance.group,
      quantity: `density at ${field(row, "wt_percent")} wt %, ${temperatureC} °C`,
      expected: numberField(row, "density_g_cm3"),
      tolerance: weightFraction < 0.1 ? allowance.below10 : allowance.above10,
      unit: "kg/l",
      reason: allowance.reason,
    };
    if (temperatureC > acidRange.temperatureC.high)
      return notComputed(check, "above 50 °C, where the formula was never fitted: we give none");
    return compare(check, densityOfAcid(weightFraction, temperatureC));
  });
}
