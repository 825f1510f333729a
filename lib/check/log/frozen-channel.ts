import { type Finding, type LogFacts, round } from "./facts.ts";

/** So many equal values, to the last digit, are a run. */
const fewestRows = 60;
/** Charge that no battery takes without a change of its voltage below the charger's limit, share of the capacity. Our own rule. */
const chargeShareOfC = 0.05;
/** Below this a charger holds no limit, V a cell: the lowest float voltages start here. Common practice. */
const limitVPerCell = 2.2;
/** Below this nothing is a battery on charge, and other checks speak of the unit or the column, V a cell. */
const deadVPerCell = 1;
/** A fall that no constant current brings about, V a cell. */
const fallVPerCell = 0.1;

/** A voltage that stands still while charge goes in below any limit, or a current that stands still, to the last digit, while the voltage falls. */
export function findFrozenChannels(facts: LogFacts): Finding[] {
  return [...frozenVoltage(facts), ...frozenCurrent(facts)];
}

function frozenVoltage({ samples, battery }: LogFacts): Finding[] {
  const { voltagesV, currentsA, elapsedS, lines } = samples;
  for (const { from, to } of runsOf(voltagesV)) {
    const voltageV = voltagesV[from] ?? 0;
    if (voltageV >= limitVPerCell * battery.cells || voltageV < deadVPerCell * battery.cells) continue;
    let chargeAh = 0;
    for (let row = from + 1; row < to; row++) {
      const stepS = (elapsedS[row] ?? 0) - (elapsedS[row - 1] ?? 0);
      const currentA = currentsA[row] ?? Number.NaN;
      if (stepS > 0 && !Number.isNaN(currentA)) chargeAh += (currentA * stepS) / 3600;
    }
    if (Math.abs(chargeAh) > chargeShareOfC * battery.capacityAh)
      return [
        {
          level: "doubt",
          row: from,
          found: `${round(voltageV)} V in every row from line ${lines[from]} to ${lines[to - 1]}, while ${round(chargeAh)} Ah went in`,
          expected: "a voltage that moves while a battery is charged below the charger's limit",
          mend: "check the voltage lead of the recorder; where it was off, list the rows under badRows of this recording in test.yaml",
        },
      ];
  }
  return [];
}

function frozenCurrent({ samples, battery }: LogFacts): Finding[] {
  const { voltagesV, currentsA, lines } = samples;
  for (const { from, to } of runsOf(currentsA)) {
    if ((currentsA[from] ?? 0) <= 0) continue;
    const fallV = (voltagesV[from] ?? Number.NaN) - (voltagesV[to - 1] ?? Number.NaN);
    if (fallV > fallVPerCell * battery.cells)
      return [
        {
          level: "doubt",
          row: from,
          found: `${round(currentsA[from] ?? 0)} A in every row from line ${lines[from]} to ${lines[to - 1]}, while the voltage fell by ${round(fallV)} V`,
          expected: "a current that falls when the voltage does",
          mend: "check the clamp or shunt of the recorder; where it was stuck, list the rows under badRows of this recording in test.yaml",
        },
      ];
  }
  return [];
}

/** Runs of equal values, half open; NaN ends a run. */
function runsOf(values: Float64Array): { from: number; to: number }[] {
  const runs: { from: number; to: number }[] = [];
  let from = 0;
  for (let row = 1; row <= values.length; row++) {
    if (row < values.length && values[row] === values[from]) continue;
    if (row - from >= fewestRows) runs.push({ from, to: row });
    from = row;
  }
  return runs;
}
