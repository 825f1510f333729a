/** The demo's tests, visit by visit. What happens here is invented; docs/demo.md tells why each test is there. */
import type { ReadingColumn } from "../../../lib/nouns/reading.ts";
import type { Scenario, Visit } from "../scenario.ts";
import * as batteries from "./batteries.ts";
import * as chargers from "./chargers.ts";
import * as instruments from "./instruments.ts";

const sixCells: ReadingColumn[] = ["density_1", "density_2", "density_3", "density_4", "density_5", "density_6"];
const threeCells: ReadingColumn[] = ["density_1", "density_2", "density_3"];
const rested: ReadingColumn[] = ["rest_h", "rest_V", "cranking_A"];
const flooded: ReadingColumn[] = [...sixCells, "acid_C", ...rested];
const onArrival: ReadingColumn[] = ["air_C", "terminal_V", "clamp_A"];

const visit = (reads: readonly ReadingColumn[], note?: string): { do: "visit" } & Visit => ({
  do: "visit",
  reads,
  ...(note === undefined ? {} : { note }),
});

const comma = { delimiter: ",", decimalMark: ".", zoned: false } as const;
const semicolon = { delimiter: ";", decimalMark: ",", zoned: false } as const;
const zoned = { delimiter: ",", decimalMark: ".", zoned: true } as const;

/** Slovenia in summer; the tests of March begin an hour behind. */
const summerMin = 120;
const winterMin = 60;

const metered = [...flooded, "mains_kWh"] as const satisfies readonly ReadingColumn[];

const bollardSixty: Scenario = {
  id: "bollard-normal-jetty-60",
  startLocal: "2026-04-13T08:40",
  offsetMin: summerMin,
  battery: batteries.jettySixty,
  storedAh: 12.4,
  upperDeficit: 0.004,
  cellDeviations: [0.001, -0.002, 0, 0.002, -0.001, -0.003],
  charger: chargers.bollardNormal,
  instruments: { ...instruments.glassBench, energyMeter: { startKWh: 18.42, resolution: 0.01 } },
  air: { meanC: 17, swingC: 3 },
  csv: comma,
  plan: [
    visit(metered, "discharged over the weekend"),
    { do: "rest", hours: 0.5 },
    {
      do: "connect",
      hours: 22,
      recordings: [{ file: "day-1.csv", recorder: instruments.tern, mishaps: { gap: { fromH: 2.2, toH: 2.5 } } }],
    },
    { do: "rest", hours: 6 },
    visit(metered),
    {
      do: "connect",
      hours: 19,
      recordings: [{ file: "day-2.csv", recorder: instruments.tern }],
      visits: [{ atH: 18.5, reads: [...onArrival, "mains_kWh"], note: "float; recorder had stopped in the evening" }],
    },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 42, recordings: [{ file: "day-3.tsv", recorder: instruments.curlew }] },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 66, recordings: [{ file: "weekend.csv", recorder: instruments.tern }] },
    { do: "rest", hours: 6 },
    visit(metered),
  ],
};

const bollardSeventyFive: Scenario = {
  id: "bollard-normal-drudge-75",
  startLocal: "2026-05-04T09:10",
  offsetMin: summerMin,
  battery: batteries.drudgeSeventyFive,
  storedAh: 20,
  upperDeficit: 0.006,
  cellDeviations: [0, 0.002, -0.001, 0.001, -0.004, 0.001],
  charger: chargers.bollardNormal,
  instruments: instruments.digitalBench,
  air: { meanC: 19, swingC: 3 },
  csv: semicolon,
  plan: [
    visit(flooded),
    { do: "connect", hours: 23, recordings: [{ file: "BLOCK01.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 5 },
    visit(flooded),
    { do: "connect", hours: 43, recordings: [{ file: "BLOCK02.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 5 },
    visit(flooded),
  ],
};

const bollardAgm: Scenario = {
  id: "bollard-agm-seal-70",
  startLocal: "2026-06-01T08:30",
  offsetMin: summerMin,
  battery: batteries.sealSeventy,
  storedAh: 17,
  upperDeficit: 0,
  cellDeviations: [],
  charger: chargers.bollardAgm,
  instruments: { ...instruments.sealedBench, energyMeter: { startKWh: 22.87, resolution: 0.01 } },
  air: { meanC: 22, swingC: 3 },
  csv: comma,
  plan: [
    visit(["battery_C", ...rested, "mains_kWh"]),
    {
      do: "connect",
      hours: 24,
      recordings: [{ file: "run-1.csv", recorder: instruments.tern, mishaps: { clockBack: { atH: 4.5, byS: 240 } } }],
    },
    { do: "rest", hours: 24 },
    visit(["battery_C", ...rested, "mains_kWh"]),
    {
      do: "connect",
      hours: 47,
      recordings: [{ file: "run-2.tsv", recorder: instruments.curlew }],
      visits: [{ atH: 46.5, reads: [...onArrival, "battery_C", "mains_kWh"] }],
    },
    { do: "rest", hours: 25 },
    visit(["battery_C", ...rested, "mains_kWh"]),
  ],
};

const gannetSixty: Scenario = {
  id: "gannet-boost-jetty-60",
  startLocal: "2026-03-09T09:00",
  offsetMin: winterMin,
  battery: batteries.jettySixty,
  storedAh: 12.9,
  upperDeficit: 0.004,
  cellDeviations: [0.001, -0.002, 0, 0.002, -0.001, -0.003],
  charger: chargers.gannetNormal,
  instruments: { ...instruments.glassBench, energyMeter: { startKWh: 14.06, resolution: 0.01 } },
  air: { meanC: 13, swingC: 2 },
  csv: semicolon,
  plan: [
    visit(metered),
    { do: "connect", hours: 23, recordings: [{ file: "BLOCK03.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 18, recordings: [{ file: "BLOCK04.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 18, recordings: [{ file: "BLOCK05.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 18, recordings: [] },
    { do: "rest", hours: 6 },
    visit(metered, "not recorded: the recorder was on another bench"),
    { do: "connect", hours: 18, recordings: [{ file: "BLOCK07.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 6 },
    visit(metered),
  ],
};

const sandbarSixtyTwo: Scenario = {
  id: "sandbar-six-weir-62",
  startLocal: "2026-07-06T08:20",
  offsetMin: summerMin,
  battery: batteries.weirSixtyTwo,
  storedAh: 9,
  upperDeficit: 0.005,
  cellDeviations: [-0.001, 0.001, 0.002, -0.004, 0, 0.001],
  charger: chargers.sandbarNormal,
  instruments: instruments.glassBench,
  air: { meanC: 24, swingC: 4 },
  csv: comma,
  plan: [
    visit(flooded),
    {
      do: "connect",
      hours: 48,
      recordings: [{ file: "first.csv", recorder: instruments.tern }],
      visits: [{ atH: 47.5, reads: onArrival, note: "recorder silent for two days; clamp meter finds current" }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    {
      do: "connect",
      hours: 66,
      recordings: [{ file: "second.csv", recorder: instruments.tern }],
      visits: [{ atH: 65.5, reads: onArrival, note: "still charging" }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    {
      do: "connect",
      hours: 66,
      recordings: [
        { file: "third.csv", recorder: instruments.tern },
        { file: "third-second-recorder.txt", recorder: instruments.crab, fromH: 24 },
      ],
      visits: [{ atH: 65.5, reads: onArrival }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
  ],
};

const breakwaterSixty: Scenario = {
  id: "breakwater-ten-jetty-60",
  startLocal: "2026-08-10T09:30",
  offsetMin: summerMin,
  battery: batteries.jettySixty,
  storedAh: 13,
  upperDeficit: 0.004,
  cellDeviations: [0.001, -0.002, 0, 0.002, -0.001, -0.003],
  charger: chargers.breakwaterNormal,
  instruments: { ...instruments.glassBench, energyMeter: { startKWh: 31.2, resolution: 0.01 } },
  air: { meanC: 25, swingC: 4 },
  csv: comma,
  plan: [
    visit(metered),
    {
      do: "connect",
      hours: 23,
      recordings: [{ file: "meritev1.txt", recorder: instruments.mussel, mishaps: { missingCurrentEvery: 171 } }],
      visits: [{ atH: 6, reads: [...onArrival, "battery_C"], note: "strong smell and audible gassing; hall doors opened" }],
    },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 42, recordings: [{ file: "meritev2.txt", recorder: instruments.mussel }] },
    { do: "rest", hours: 6 },
    visit(metered, "levels topped up with distilled water after the reading"),
  ],
};

const petrelSixty: Scenario = {
  id: "petrel-renew-weir-62",
  startLocal: "2026-09-07T09:00",
  offsetMin: summerMin,
  battery: batteries.weirSixtyTwo,
  storedAh: 15,
  upperDeficit: 0.004,
  cellDeviations: [-0.001, 0.001, 0.002, -0.004, 0, 0.001],
  charger: chargers.petrelPulse,
  instruments: instruments.digitalBench,
  air: { meanC: 20, swingC: 3 },
  csv: comma,
  plan: [
    visit(flooded),
    { do: "connect", hours: 24, recordings: [{ file: "0001.log", recorder: instruments.shoal }] },
    { do: "rest", hours: 24 },
    visit(flooded),
    {
      do: "connect",
      hours: 23,
      recordings: [{ file: "0002.log", recorder: instruments.shoal }],
      // Somebody on the slip tripped the breaker.
      mainsOff: { fromH: 5.2, toH: 5.7 },
    },
    { do: "rest", hours: 24 },
    visit(flooded),
  ],
};

const cockleTwelve: Scenario = {
  id: "cockle-12v-moped-10",
  startLocal: "2026-05-18T10:00",
  offsetMin: summerMin,
  battery: batteries.mopedTwelve,
  storedAh: 2.4,
  upperDeficit: 0.003,
  cellDeviations: [0.002, 0, -0.003, 0.001, -0.001, 0],
  charger: chargers.cockleTwelve,
  instruments: instruments.glassBench,
  air: { meanC: 19, swingC: 2 },
  csv: comma,
  plan: [
    visit(flooded),
    {
      do: "connect",
      hours: 22,
      recordings: [{ file: "meritev3.txt", recorder: instruments.mussel, mishaps: { temperatureOnlyEvery: 40 } }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    {
      do: "connect",
      hours: 18,
      recordings: [{ file: "meritev4.txt", recorder: instruments.mussel, mishaps: { temperatureOnlyEvery: 40 } }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    {
      do: "connect",
      hours: 18,
      recordings: [{ file: "meritev5.txt", recorder: instruments.mussel, mishaps: { temperatureOnlyEvery: 40 } }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
  ],
};

const cockleSix: Scenario = {
  id: "cockle-6v-moped-12",
  startLocal: "2026-06-08T09:00",
  offsetMin: summerMin,
  battery: batteries.mopedSix,
  storedAh: 2.6,
  upperDeficit: 0.003,
  cellDeviations: [0.001, -0.002, 0.001],
  charger: chargers.cockleSix,
  instruments: instruments.glassBench,
  air: { meanC: 22, swingC: 2 },
  csv: zoned,
  plan: [
    visit([...threeCells, "acid_C", ...rested]),
    { do: "connect", hours: 29, recordings: [{ file: "six-volt-1.tsv", recorder: instruments.curlew }] },
    { do: "rest", hours: 18 },
    visit([...threeCells, "acid_C", ...rested]),
    { do: "connect", hours: 24, recordings: [{ file: "six-volt-2.tsv", recorder: instruments.curlew }] },
    { do: "rest", hours: 6 },
    visit([...threeCells, "acid_C", ...rested]),
  ],
};

const coracleSeventy: Scenario = {
  id: "coracle-four-steeple-70",
  startLocal: "2026-04-20T09:20",
  offsetMin: summerMin,
  battery: batteries.steepleSeventy,
  storedAh: 20,
  upperDeficit: 0.005,
  cellDeviations: [0, 0.001, -0.001, 0.002, -0.002, -0.003],
  charger: chargers.coracleNormal,
  instruments: instruments.glassBench,
  air: { meanC: 16, swingC: 3 },
  csv: semicolon,
  plan: [
    visit(flooded),
    { do: "connect", hours: 48, recordings: [{ file: "BLOCK11.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 5 },
    visit(flooded),
    {
      do: "connect",
      hours: 42,
      recordings: [{ file: "BLOCK12.TXT", recorder: instruments.crab }],
      visits: [{ atH: 41.5, reads: onArrival }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    {
      do: "connect",
      hours: 66,
      recordings: [{ file: "BLOCK13.TXT", recorder: instruments.crab }],
      visits: [{ atH: 65.5, reads: onArrival }],
    },
    { do: "rest", hours: 6 },
    visit(flooded),
    { do: "connect", hours: 42, recordings: [{ file: "BLOCK14.TXT", recorder: instruments.crab }] },
    { do: "rest", hours: 6 },
    visit(flooded),
    { do: "rest", hours: 0.5 },
    { do: "visit", reads: flooded, mixed: true, note: "acid bubbled with a squeeze bulb for ten minutes, then read again" },
  ],
};

const limpetSeventyFive: Scenario = {
  id: "limpet-keep-drudge-75",
  startLocal: "2026-09-21T08:50",
  offsetMin: summerMin,
  battery: batteries.drudgeSeventyFive,
  storedAh: 21,
  upperDeficit: 0.006,
  cellDeviations: [0, 0.002, -0.001, 0.001, -0.004, 0.001],
  charger: chargers.limpetNormal,
  instruments: { ...instruments.digitalBench, energyMeter: { startKWh: 35.71, resolution: 0.01 } },
  air: { meanC: 18, swingC: 3 },
  csv: comma,
  plan: [
    visit(metered),
    {
      do: "connect",
      hours: 168,
      recordings: [{ file: "hold-1.tsv", recorder: instruments.curlew, mishaps: { gap: { fromH: 52, toH: 55.5 } } }],
      visits: [
        { atH: 48, reads: [...onArrival, "battery_C", "mains_kWh"], note: "still at full voltage" },
        { atH: 167.5, reads: [...onArrival, "battery_C", "mains_kWh"], note: "still at full voltage; plates of cell 5 just covered" },
      ],
    },
    { do: "rest", hours: 6 },
    visit(metered, "read before topping up"),
    { do: "connect", hours: 42, recordings: [{ file: "hold-2.tsv", recorder: instruments.curlew }] },
    { do: "rest", hours: 6 },
    visit(metered),
  ],
};

const slipwaySeventyFive: Scenario = {
  id: "slipway-clockwork-drudge-75",
  startLocal: "2026-10-05T09:00",
  offsetMin: summerMin,
  battery: batteries.drudgeSeventyFive,
  storedAh: 19,
  upperDeficit: 0.006,
  cellDeviations: [0, 0.002, -0.001, 0.001, -0.004, 0.001],
  charger: chargers.slipwayNormal,
  instruments: { ...instruments.glassBench, energyMeter: { startKWh: 40.33, resolution: 0.01 } },
  air: { meanC: 15, swingC: 3 },
  csv: comma,
  plan: [
    visit(metered),
    { do: "connect", hours: 23, recordings: [{ file: "0003.log", recorder: instruments.shoal }] },
    { do: "rest", hours: 6 },
    visit(metered),
    { do: "connect", hours: 18, recordings: [{ file: "0004.log", recorder: instruments.shoal }] },
    { do: "rest", hours: 6 },
    visit(metered),
  ],
};

export const demoScenarios: readonly Scenario[] = [
  bollardSixty,
  bollardSeventyFive,
  bollardAgm,
  gannetSixty,
  sandbarSixtyTwo,
  breakwaterSixty,
  petrelSixty,
  cockleTwelve,
  cockleSix,
  coracleSeventy,
  limpetSeventyFive,
  slipwaySeventyFive,
];
