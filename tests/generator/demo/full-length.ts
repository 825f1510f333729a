/** Ten days at one sample a second, one log in each recorder's form: for trying the tool at the size of real use. */
import type { RecorderModel } from "../recorder.ts";
import type { Scenario } from "../scenario.ts";
import * as batteries from "./batteries.ts";
import * as chargers from "./chargers.ts";
import * as instruments from "./instruments.ts";

const hours = 240;

const fullLength = (recorder: RecorderModel): Scenario => {
  const { onChange: _everySecondInstead, ...rest } = recorder;
  return {
    id: `full-length-${recorder.dialect}`,
    startLocal: "2026-06-01T08:00",
    offsetMin: 120,
    battery: batteries.drudgeSeventyFive,
    storedAh: 21,
    upperDeficit: 0.006,
    cellDeviations: [0, 0, 0, 0, 0, 0],
    charger: chargers.limpetNormal,
    instruments: instruments.digitalBench,
    air: { meanC: 20, swingC: 3 },
    csv: { delimiter: ",", decimalMark: ".", zoned: false },
    plan: [
      {
        do: "connect",
        hours,
        recordings: [{ file: `full-length-${recorder.dialect}.txt`, recorder: { ...rest, intervalS: 1, stop: {} } }],
      },
    ],
  };
};

export const fullLengthScenarios: readonly Scenario[] = [
  instruments.tern,
  instruments.crab,
  instruments.mussel,
  instruments.shoal,
  instruments.curlew,
].map(fullLength);
