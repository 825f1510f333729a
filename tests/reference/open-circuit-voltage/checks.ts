/** Every row of the rest-voltage table beside ours: the voltage from molality, and the density from molality that stands with it. */
import { densityOfAcid, weightFractionFromMolality } from "../../../lib/electrochem/acid.ts";
import { restVoltagePerCell } from "../../../lib/electrochem/rest-voltage.ts";
import { type Check, compare } from "../check.ts";
import { field, numberField, readReferenceTable } from "../read-table.ts";

/** What a source may differ by, V per cell, at 10 to 40 °C and beyond, and why. */
const allowances = [
  {
    begins: "Bode 1977 log10",
    group: "Bode, six digits",
    middle: 0.000_051,
    ends: 0.000_051,
    reason: "the same formula, printed to 0.1 mV",
  },
  {
    begins: "Bode 1977 half-cell",
    group: "Bode, three-digit half-cells",
    middle: 0.0018,
    ends: 0.0018,
    reason: "rounding of its coefficients",
  },
  {
    begins: "thermodynamic: ",
    group: "Activities, 25 °C",
    middle: 0.0007,
    ends: 0.0007,
    reason: "an independent route; shape agrees to 0.6 mV, and 0.1 for printing",
  },
  {
    begins: "thermodynamic as at",
    group: "Activities, 0 to 50 °C",
    middle: 0.0022,
    ends: 0.0055,
    reason:
      "we carry a straight slope, the route bends: 1.7 mV at 15 K from 25 °C, 4.5 mV at 25 K; the slope itself differs by up to 0.4 mV at 25 K; and 0.6 as above",
  },
] as const;

export function checkRestVoltages(): Check[] {
  return readReferenceTable("open-circuit-voltage/open-circuit-voltage.csv").flatMap((row, i) => {
    const source = field(row, "source");
    const allowance = allowances.find(({ begins }) => source.startsWith(begins));
    if (allowance === undefined) throw new Error(`no tolerance is given for the source ${source}`);
    const molality = numberField(row, "molality");
    const temperatureC = numberField(row, "temp_c");
    const isMiddle = temperatureC >= 10 && temperatureC <= 40;
    const voltage: Omit<Check, "verdict" | "ours"> = {
      id: `open-circuit-voltage/${i + 1}`,
      group: allowance.group,
      quantity: `rest voltage at ${molality} mol/kg, ${temperatureC} °C`,
      expected: numberField(row, "ocv_v_per_cell"),
      tolerance: isMiddle ? allowance.middle : allowance.ends,
      unit: "V/cell",
      reason: allowance.reason,
    };
    const density: Omit<Check, "verdict" | "ours"> = {
      id: `open-circuit-voltage/${i + 1}/density`,
      group: "Density beside the voltages",
      quantity: `density at ${molality} mol/kg, ${temperatureC} °C`,
      expected: numberField(row, "density_g_cm3"),
      tolerance: 0.0003,
      unit: "kg/l",
      reason: "computed by its makers from other dilute rows below 10 wt %",
    };
    return [
      compare(voltage, restVoltagePerCell(molality, temperatureC)),
      compare(density, densityOfAcid(weightFractionFromMolality(molality), temperatureC)),
    ];
  });
}
