import { hydrogenVolumeL } from "../../electrochem/faraday.ts";
import type { FigureDefinition } from "../define.ts";
import { findOvercharge, inProportion } from "../overcharge.ts";
import type { TestContext } from "../test-context.ts";

/** The state in which the gas is given, °C, at one standard atmosphere. */
const gasC = 25;

export const hydrogen: FigureDefinition<TestContext> = {
  id: "hydrogen",
  label: "Hydrogen that overcharge can have set free, at most",
  unit: "l",
  version: 1,
  explain:
    "The same overcharge as overcharge-water, as litres of hydrogen at 25 °C and one atmosphere, over the whole test. Unrecorded charge is not in it. From 4 % in air hydrogen explodes: keep fresh air moving and sparks and flames away. How much air is asked for is ventilation-need's matter.",
  formula: "V = 0.456 l/Ah · cells · (Q_recorded − Q_density)",
  source: "Faraday's law and the ideal gas; 0.42 l/Ah in IEC 62485-2 is the same at 0 °C.",
  checkedBy: ["W010: 0.45642 l an ampere-hour and cell", "W009 at 0 °C"],
  compute: (context) => inProportion(findOvercharge(context), hydrogenVolumeL(1, context.battery.cells, gasC)),
};
