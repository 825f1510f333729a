/**
 * Writes a made-up workspace of any size, to see how the build bears it: invented chargers and tests, the same bytes for the same seed.
 *
 *   npx tsx tests/large/write-large.ts DIR [--chargers 1000] [--tests 2000]
 *
 * The curves are closed forms, not the demo's physics: they only have to be read, measured and published like real ones, in their variety.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Random, seededRandom, seedFromName } from "../generator/random.ts";

export type LargeSize = { readonly chargers: number; readonly tests: number };

/** A charger as it is made up: what it does is what its logs show. */
type Invented = {
  readonly id: string;
  readonly name: string;
  readonly currentA: number;
  readonly limitV: number;
  /** How it ends: a float, switching off, or holding its limit. */
  readonly end: "float" | "off" | "hold";
  readonly floatV: number;
  readonly price: number;
};

const firstNames = ["Alder", "Birch", "Clover", "Dune", "Ember", "Fennel", "Gorse", "Heath", "Iris", "Juniper", "Kelp", "Larch", "Moss"];
const secondNames = ["Brook", "Crag", "Dell", "Fold", "Glen", "Hollow", "Knoll", "Ledge", "Mere", "Notch", "Pool", "Ridge", "Spur"];
const makers = ["Ninefold Works", "Paper Lantern Electric", "Far Quay Apparatus", "Tin Whistle Supply"];
const capacitiesAh = [36, 44, 50, 60, 72, 80, 95, 110];
const constructions = ["flooded", "flooded-calcium", "EFB", "AGM"];
const dayMs = 86_400_000;
const hourMs = 3_600_000;

const pick = <T>(list: readonly T[], random: Random): T => list[Math.floor(random.uniform() * list.length)] as T;
const between = (low: number, high: number, random: Random): number => low + (high - low) * random.uniform();
const iso = (ms: number): string => new Date(ms).toISOString().replace(".000Z", "Z");

/** Writes the workspace into a folder that is there or is made. */
export function writeLarge(root: string, { chargers, tests }: LargeSize): void {
  const write = (path: string, text: string): void => {
    const target = join(root, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, text);
  };
  write("data/site.yaml", siteRecord);
  for (const [id, text] of Object.entries(instruments)) write(`data/instruments/${id}.yaml`, text);
  for (const capacityAh of capacitiesAh)
    for (const construction of constructions)
      write(`data/batteries/${batteryId(capacityAh, construction)}.yaml`, batteryRecord(capacityAh, construction));
  const invented = Array.from({ length: chargers }, (_, place) => inventCharger(place));
  for (const charger of invented) write(`data/chargers/${charger.id}.yaml`, chargerRecord(charger));
  for (let place = 0; place < tests; place++) {
    const charger = invented[place % chargers];
    if (charger === undefined) throw new Error("a test needs a charger: ask for one at least");
    const round = Math.floor(place / chargers) + 1;
    writeTest(write, charger, round);
    if (round === 1) write(`content/reviews/${charger.id}.md`, review(charger));
  }
}

function inventCharger(place: number): Invented {
  const name = `${firstNames[place % 13]} ${secondNames[Math.floor(place / 13) % 13]} ${Math.floor(place / 169) + 1}`;
  const id = name.toLowerCase().replaceAll(" ", "-");
  const random = seededRandom(seedFromName(id));
  return {
    id,
    name,
    currentA: pick([2, 4, 6, 8, 10, 12], random),
    limitV: Number(between(13.9, 14.8, random).toFixed(1)),
    end: pick(["float", "off", "hold"] as const, random),
    floatV: Number(between(13.3, 13.8, random).toFixed(1)),
    price: Math.round(between(20, 160, random)) - 0.1,
  };
}

const siteRecord = `title: A thousand chargers that do not exist
tagline: Invented from end to end, to see how large a site may grow
language: en
baseUrl: https://large.example/chargers/
invented: true
inventedNote: Every charger, battery and measurement was made up by a program. No real product is judged here.
operator: { name: A bench that does not exist, sells: false }
licence: CC-BY-4.0
electricity: { pricePerKWh: 0.25, currency: EUR, on: 2026-01-01, source: Invented tariff }
`;

const instruments: Readonly<Record<string, string>> = {
  recorder: `name: Plain recorder (invented)
kind: recorder
measures:
  voltage: { percentOfReading: 0.1, digits: 3, resolution: 0.001 }
  current: { percentOfReading: 0.5, digits: 3, resolution: 0.001 }
`,
  hydrometer: `name: Glass hydrometer (invented)
kind: hydrometer
measures:
  density: { plusMinus: 0.003, resolution: 0.005 }
density: { convention: kg/l at 25 °C, correctsTemperature: false }
`,
  voltmeter: `name: Bench voltmeter (invented)
kind: voltmeter
measures:
  voltage: { percentOfReading: 0.05, digits: 2, resolution: 0.01 }
`,
  thermometer: `name: Probe thermometer (invented)
kind: thermometer
measures:
  temperature: { plusMinus: 1, resolution: 0.5 }
`,
};

const batteryId = (capacityAh: number, construction: string): string => `${construction.toLowerCase()}-${capacityAh}`;

const batteryRecord = (capacityAh: number, construction: string): string => `name: Test battery ${construction} ${capacityAh} (invented)
nominalVoltageV: 12
cells: 6
construction: ${construction}
capacityAh: ${capacityAh}
fullDensity: { value: 1.28, convention: kg/l at 25 °C }
emptyDensity: { value: 1.10, convention: kg/l at 25 °C }
`;

function chargerRecord({ id, name, currentA, limitV, end, price }: Invented): string {
  const random = seededRandom(seedFromName(`label of ${id}`));
  // Labels are kind to their chargers: some promise more than the logs will show.
  const claimedA = random.uniform() < 0.3 ? Math.round(currentA * 1.25) : currentA;
  return `name: ${name}
maker: ${pick(makers, random)} (invented)
price: { amount: ${price.toFixed(2)}, currency: EUR, on: 2026-01-05, where: mail order }
modes:
  - id: normal
    name: NORMAL
    claims:
      currentA: { value: ${claimedA}, words: "${claimedA} A", from: label }
      voltageV: { value: ${limitV.toFixed(1)}, words: "${limitV.toFixed(1)} V", from: label }
      characteristic: { value: ${end === "off" ? "IUa" : end === "float" ? "IUoU" : "IU"}, from: manual }
`;
}

const review = ({ id, name }: Invented): string => `---
title: ${name}, as it came out
by: Nobody (invented)
on: 2026-02-01
language: en
---
*Invented by a program.* The first connection put in [[charge-recorded of connection/1 in ${id}-1]].
`;

/** A test of two to four connections, each recorded but for one in eight. */
function writeTest(write: (path: string, text: string) => void, charger: Invented, round: number): void {
  const id = `${charger.id}-${round}`;
  const random = seededRandom(seedFromName(id));
  const capacityAh = pick(capacitiesAh, random);
  const construction = pick(constructions, random);
  const isSealed = construction === "AGM";
  const connections = 2 + Math.floor(random.uniform() * 3);
  const beginMs = Date.UTC(2026, 0, 5) + Math.floor(random.uniform() * 90) * dayMs;
  const takenOutAh = capacityAh * between(0.45, 0.75, random);
  let missingAh = takenOutAh * 1.08;
  const records: string[] = [];
  const visits = [visitRow(beginMs + 8 * hourMs, 1 - takenOutAh / capacityAh, isSealed, random)];
  for (let connection = 1; connection <= connections; connection++) {
    const onMs = beginMs + (connection - 1) * dayMs + 9 * hourMs;
    const hours = Math.round(between(6, 15, random));
    const { text, chargeAh } = logOf(charger, missingAh, hours, random);
    missingAh = Math.max(0, missingAh - chargeAh);
    const isRecorded = connection === 1 || random.uniform() > 1 / 8;
    const name = `day-${connection}.csv`;
    records.push(
      [
        `  - on: ${iso(onMs)}`,
        `    off: ${iso(onMs + hours * hourMs)}`,
        "    endedBy: person",
        ...(isRecorded ? [`    recordings: [logs/${name}]`] : []),
      ].join("\n"),
    );
    if (isRecorded) write(`data/tests/${id}/logs/${name}`, text);
    visits.push(visitRow(onMs + (hours + 6) * hourMs, 1 - missingAh / 1.08 / capacityAh, isSealed, random));
  }
  const columns = isSealed
    ? "at,rest_h,rest_V,battery_C,charger"
    : "at,density_1,density_2,density_3,density_4,density_5,density_6,acid_C,rest_h,rest_V,charger";
  write(`data/tests/${id}/readings.csv`, `${columns}\n${visits.join("\n")}\n`);
  write(
    `data/tests/${id}/test.yaml`,
    `charger: ${charger.id}
mode: normal
battery: ${batteryId(capacityAh, construction)}
instruments: { recorder: recorder, voltmeter: voltmeter, thermometer: thermometer${isSealed ? "" : ", hydrometer: hydrometer"} }
zone: UTC
tester: Nobody (invented)
dischargedAh: ${takenOutAh.toFixed(1)}
${isSealed ? "" : "target: { densityAt25C: 1.265 }\n"}connections:
${records.join("\n")}
publishedOn: 2026-06-01
`,
  );
}

function visitRow(atMs: number, stateOfCharge: number, isSealed: boolean, random: Random): string {
  const at = new Date(atMs).toISOString().slice(0, 16).replace("T", " ");
  const restV = (11.9 + 0.85 * stateOfCharge + 0.01 * random.normal()).toFixed(2);
  const temperatureC = (Math.round(2 * between(15, 22, random)) / 2).toFixed(1);
  if (isSealed) return [at, "6.0", restV, temperatureC, "disconnected"].join(",");
  const cells = Array.from({ length: 6 }, () =>
    (Math.round((1.1 + 0.18 * stateOfCharge + 0.004 * random.normal()) * 200) / 200).toFixed(3),
  );
  return [at, ...cells, temperatureC, "6.0", restV, "disconnected"].join(",");
}

/** A charge at three minutes a row: current up to the limit, taper, and the end that the charger has. */
function logOf(charger: Invented, missingAh: number, hours: number, random: Random): { text: string; chargeAh: number } {
  const stepS = 180;
  const rows = Math.floor((hours * 3600) / stepS);
  const bulkAh = 0.75 * missingAh;
  const taperH = Math.max(0.4, (0.25 * missingAh) / charger.currentA);
  const bulkH = bulkAh / charger.currentA;
  const lines = ["elapsed_s,voltage_V,current_A"];
  let chargeAh = 0;
  for (let row = 0; row <= rows; row++) {
    const atH = (row * stepS) / 3600;
    const taperA = charger.currentA * Math.exp(-(atH - bulkH) / taperH);
    const isOver = atH > bulkH && taperA < charger.currentA * 0.04;
    const [voltageV, currentA] =
      atH <= bulkH
        ? [12.4 + (charger.limitV - 12.4) * (bulkH === 0 ? 1 : atH / bulkH) ** 1.6, charger.currentA]
        : !isOver || charger.end === "hold"
          ? [charger.limitV, Math.max(taperA, 0.02 * charger.currentA)]
          : charger.end === "float"
            ? [charger.floatV, 0.01 * charger.currentA]
            : [12.9 + 0.6 * Math.exp(-(atH - bulkH - 3.2 * taperH) / 0.7), 0];
    const shownA = currentA === 0 ? 0 : currentA + 0.004 * random.normal();
    lines.push(`${row * stepS},${(voltageV + 0.003 * random.normal()).toFixed(3)},${shownA.toFixed(3)}`);
    chargeAh += (currentA * stepS) / 3600;
  }
  return { text: `${lines.join("\n")}\n`, chargeAh: Math.min(chargeAh, missingAh) };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const dir = process.argv[2];
  if (dir === undefined || dir.startsWith("--")) throw new Error("expected a folder to write into");
  const asked = (name: string, usual: number): number => {
    const place = process.argv.indexOf(`--${name}`);
    return place < 0 ? usual : Number(process.argv[place + 1]);
  };
  writeLarge(dir, { chargers: asked("chargers", 1000), tests: asked("tests", 2000) });
}
