import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, describe, expect, it } from "vitest";
import { parse } from "yaml";
import { instrument } from "../../lib/nouns/instrument.ts";
import { readingColumns } from "../../lib/nouns/reading.ts";
import { acidDensity, massFractionOf } from "./acid.ts";
import { acidPerAhG, waterBoundPerAhG, waterSplitPerAhG } from "./battery.ts";
import { type BenchFiles, runScenario } from "./bench.ts";
import { demoScenarios } from "./demo/scenarios.ts";
import { readBack } from "./read-back.ts";
import type { Scenario } from "./scenario.ts";

const root = join(import.meta.dirname, "../..");
const runs = new Map<string, { scenario: Scenario; files: BenchFiles }>();

beforeAll(() => {
  for (const scenario of demoScenarios) runs.set(scenario.id, { scenario, files: runScenario(scenario) });
}, 120_000);

function run(id: string): { scenario: Scenario; files: BenchFiles } {
  const found = runs.get(id);
  if (found === undefined) throw new Error(`no scenario ${id}`);
  return found;
}

describe.each(demoScenarios.map((scenario) => scenario.id))("demo test %s", (id) => {
  it("is committed byte for byte as the generator writes it", () => {
    const { files } = run(id);
    expect(readdirSync(join(root, `data/tests/${id}/logs`)).sort()).toEqual([...files.logs.keys()].sort());
    for (const [name, bytes] of files.logs) {
      const committed = readFileSync(join(root, "data/tests", id, "logs", name));
      expect(committed.equals(bytes), `${id}/logs/${name}`).toBe(true);
    }
    expect(readFileSync(join(root, "data/tests", id, "readings.csv"), "utf8")).toBe(files.readings);
    expect(JSON.parse(readFileSync(join(root, "tests/generator/truth", `${id}.json`), "utf8"))).toEqual(files.truth);
  });

  it("balances: charge in is charge kept and gas made, acid and water follow it", () => {
    const { truth } = run(id).files;
    // Truth is rounded to five decimals.
    expect(truth.reactedAh + truth.gassedAh).toBeCloseTo(truth.chargeAh, 4);
    expect(truth.battery.endStoredAh - truth.battery.startStoredAh).toBeCloseTo(truth.reactedAh, 4);
    expect(truth.acidEndG - truth.acidStartG).toBeCloseTo(acidPerAhG * truth.reactedAh, 3);
    expect(truth.waterStartG - truth.waterEndG).toBeCloseTo(waterBoundPerAhG * truth.reactedAh + waterSplitPerAhG * truth.gassedAh, 3);
    const connectedAh = truth.connections.reduce((sum, connection) => sum + connection.chargeAh, 0);
    expect(connectedAh).toBeCloseTo(truth.chargeAh, 3);
  });

  it("has stages that follow each other without hole or overlap and add up to the recording", () => {
    for (const recording of run(id).files.truth.recordings) {
      let reachedS = 0;
      for (const stage of recording.stages) {
        expect(stage.startS).toBe(reachedS);
        reachedS = stage.endS;
      }
      expect(reachedS).toBe(recording.spanS);
      const chargeAh = recording.stages.reduce((sum, stage) => sum + stage.chargeAh, 0);
      expect(chargeAh).toBeCloseTo(recording.chargeAh, 3);
    }
  });

  it("has a mean density that the acid balance gives, and a top that is never stronger than 0.002 above it", () => {
    const { truth, scenario } = { truth: run(id).files.truth, scenario: run(id).scenario };
    for (const visit of truth.visits) {
      const missingAh = scenario.battery.capacityAh - visit.storedAh;
      const acidG = scenario.battery.electrolyteFullG * massFractionOf(scenario.battery.fullDensityAt25C) - acidPerAhG * missingAh;
      const massG = scenario.battery.electrolyteFullG - (acidPerAhG - waterBoundPerAhG) * missingAh;
      const dryDensity = acidDensity(acidG / massG, 25);
      // Gassing takes water away, so the acid may only be stronger than the balance without gassing says.
      expect(visit.meanDensityAt25C).toBeGreaterThan(dryDensity - 0.0001);
      expect(visit.meanDensityAt25C).toBeLessThan(dryDensity + 0.01);
      expect(visit.upperDensityAt25C).toBeLessThan(visit.meanDensityAt25C + 0.002);
    }
  });

  it("reads only columns that readings may have, inside their plausible range", () => {
    const { readings } = run(id).files;
    const { delimiter, decimalMark } = run(id).scenario.csv;
    const [heading = "", ...rows] = readings.trimEnd().split("\n");
    const columns = heading.split(delimiter);
    const others = new Set(["at", "mixed", "charger", "note"]);
    for (const row of rows) {
      for (const [place, cell] of row.split(delimiter).entries()) {
        const column = columns[place] ?? "note";
        if (others.has(column) || cell === "") continue;
        const range = Object.entries(readingColumns).find(([name]) => name === column)?.[1];
        const value = Number(cell.replace(decimalMark, "."));
        expect(range, column).toBeDefined();
        expect(value).toBeGreaterThanOrEqual(range?.low ?? Number.POSITIVE_INFINITY);
        expect(value).toBeLessThanOrEqual(range?.high ?? Number.NEGATIVE_INFINITY);
      }
    }
  });
});

describe("demo logs, read back", () => {
  const planned = demoScenarios.flatMap((scenario) =>
    scenario.plan.flatMap((step) => (step.do === "connect" ? step.recordings.map((recording) => ({ scenario, recording })) : [])),
  );

  it.each(planned.map(({ scenario, recording }) => [scenario.id, recording.file, recording] as const))(
    "%s: %s holds the truth within its recorder's stated accuracy",
    (id, _file, recording) => {
      const { files } = run(id);
      const truth = files.truth.recordings.find((candidate) => candidate.file === recording.file);
      const bytes = files.logs.get(recording.file);
      if (truth === undefined || bytes === undefined) throw new Error("no such recording");
      const { measures, leadResistanceOhm } = instrument.parse(
        parse(readFileSync(join(root, `data/instruments/${recording.recorder.id}.yaml`), "utf8")),
      );
      const log = readBack(bytes, recording.recorder.dialect);
      const [voltage, current] = [measures.voltage, measures.current];
      const halfWidthV =
        ((voltage?.percentOfReading ?? 0) / 100) * truth.highestVoltageV +
        (voltage?.digits ?? 0) * (voltage?.resolution ?? 0) +
        (leadResistanceOhm ?? 0) * truth.highestCurrentA;
      // A highest value also holds the noise's luckiest draw: four times its standard deviation, over some thousand rows.
      expect(Math.abs(log.highestV - truth.highestVoltageV)).toBeLessThan(halfWidthV + 4 * recording.recorder.voltage.noise);

      const steadyAh =
        ((current?.percentOfReading ?? 0) / 100) * truth.chargeAh +
        (current?.digits ?? 0) * (current?.resolution ?? 0) * (truth.spanS / 3600);
      // Where the current jumps between two rows, a trapezoid is off by up to half the jump over the interval.
      const jumps = truth.stages.filter((stage) => stage.kind !== "pulses").length;
      const jumpAh = (jumps * truth.highestCurrentA * recording.recorder.intervalS) / 2 / 3600;
      // Pulses jump at every edge, either way; over some hundred of them the errors cancel to a few percent.
      const pulsesAh = 0.05 * truth.stages.reduce((sum, stage) => sum + (stage.kind === "pulses" ? stage.chargeAh : 0), 0);
      // Rows repeated by a clock set back are passed over, and count twice in time.
      const backAh = (truth.clockBackS * truth.highestCurrentA) / 3600;
      expect(Math.abs(log.chargeAh - truth.chargeAh)).toBeLessThan(steadyAh + jumpAh + pulsesAh + backAh);
      expect(log.hours * 3600 + truth.clockBackS).toBeCloseTo(truth.spanS, 6);
    },
  );

  it("writes the headings of one recorder in windows-1250, of another in UTF-16 with its mark", () => {
    const mussel = run("cockle-12v-moped-10").files.logs.get("meritev3.txt");
    expect(new TextDecoder("windows-1250").decode(mussel).split("\r\n")[0]).toBe("Čas [s]\tNapetost [V]\tTok [A]\tTemp. [°C]");
    const curlew = run("cockle-6v-moped-12").files.logs.get("six-volt-1.tsv");
    expect([curlew?.[0], curlew?.[1]]).toEqual([0xff, 0xfe]);
  });

  it("shows the oddities that the tool must meet: a gap, a clock set back, rows of temperature alone, missing values", () => {
    const gaps = run("bollard-normal-jetty-60").files.truth.recordings[0]?.gaps;
    expect(gaps?.map((gap) => gap.endS - gap.startS)).toEqual([18 * 60]);
    expect(run("bollard-agm-seal-70").files.truth.recordings[0]?.clockBackS).toBe(240);
    const temperatureOnly = run("cockle-12v-moped-10").files.logs.get("meritev3.txt")?.toString("latin1");
    expect(temperatureOnly?.match(/\t---\t---\t\d+\r\n/g)?.length).toBe(150);
    const missing = run("breakwater-ten-jetty-60").files.logs.get("meritev1.txt")?.toString("latin1");
    expect(missing?.match(/\tOL\t/g)?.length).toBe(35);
  });

  it("ends recordings in each way there is: by the charger, the recorder, a person, the mains", () => {
    const enders = [...runs.values()].flatMap(({ files }) => files.truth.recordings.map((recording) => recording.endedBy));
    expect([...new Set(enders)].sort()).toEqual(["charger", "mains", "person", "recorder"]);
  });

  it("stays small: all logs under 4 MB, each under 200 KB", () => {
    const sizes = [...runs.values()].flatMap(({ files }) => [...files.logs.values()].map((bytes) => bytes.length));
    expect(Math.max(...sizes)).toBeLessThan(200_000);
    expect(sizes.reduce((sum, size) => sum + size, 0)).toBeLessThan(4_000_000);
  });
});
