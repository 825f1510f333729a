import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { parse } from "yaml";
import type { z } from "zod";
import { battery } from "../../lib/nouns/battery.ts";
import { charger } from "../../lib/nouns/charger.ts";
import { instrument } from "../../lib/nouns/instrument.ts";
import { site } from "../../lib/nouns/site.ts";
import { test as testRecord } from "../../lib/nouns/test.ts";
import { demoScenarios } from "./demo/scenarios.ts";
import type { TestTruth } from "./truth.ts";

const root = join(import.meta.dirname, "../..");

function readYaml(path: string): unknown {
  return parse(readFileSync(join(root, path), "utf8"));
}

function names(folder: string): string[] {
  return readdirSync(join(root, folder)).sort();
}

/** As committed; generator.test.ts holds that the generator still writes it so. */
function truthOf(id: string): TestTruth {
  return JSON.parse(readFileSync(join(root, "tests/generator/truth", `${id}.json`), "utf8"));
}

describe.each(demoScenarios.map((scenario) => scenario.id))("record of %s", (id) => {
  it("has a record whose connections and recordings are those of the scenario", () => {
    const truth = truthOf(id);
    const record = testRecord.parse(readYaml(`data/tests/${id}/test.yaml`));
    expect(record.connections.map((connection) => connection.on)).toEqual(truth.connections.map((connection) => connection.on));
    for (const [place, connection] of record.connections.entries()) {
      if (connection.off !== undefined) expect(connection.off).toBe(truth.connections[place]?.off);
      const files = connection.recordings.map((recording) => (typeof recording === "string" ? recording : recording.file));
      const expected = truth.recordings.filter((recording) => recording.connection === place + 1);
      expect(files).toEqual(expected.map((recording) => `logs/${recording.file}`));
      for (const recording of connection.recordings) {
        if (typeof recording === "string" || recording.startedAt === undefined) continue;
        const expectedStart = expected.find((candidate) => recording.file === `logs/${candidate.file}`)?.startAt;
        expect(recording.startedAt).toBe(expectedStart);
      }
    }
  });
});

describe("demo workspace", () => {
  const kinds: readonly [string, z.ZodType][] = [
    ["data/chargers", charger],
    ["data/batteries", battery],
    ["data/instruments", instrument],
  ];

  it("has records that fit their schemas, and says that it is invented", () => {
    expect(site.parse(readYaml("data/site.yaml")).invented).toBe(true);
    for (const [folder, schema] of kinds) {
      for (const name of names(folder)) {
        const result = schema.safeParse(readYaml(`${folder}/${name}`));
        expect(result.success ? [] : result.error.issues, `${folder}/${name}`).toEqual([]);
      }
    }
  });

  it("refers only to records that are there", () => {
    const ids = (folder: string): string[] => names(folder).map((name) => name.replace(/\.yaml$/, ""));
    const [chargers, batteries, instruments] = [ids("data/chargers"), ids("data/batteries"), ids("data/instruments")];
    expect(names("data/tests")).toEqual(demoScenarios.map((scenario) => scenario.id).sort());
    for (const scenario of demoScenarios) {
      const record = testRecord.parse(readYaml(`data/tests/${scenario.id}/test.yaml`));
      expect(chargers).toContain(record.charger);
      expect(batteries).toContain(record.battery);
      const modes = charger.parse(readYaml(`data/chargers/${record.charger}.yaml`)).modes.map((mode) => mode.id);
      expect(modes).toContain(record.mode);
      const recorders = record.connections.flatMap((connection) =>
        connection.recordings.flatMap((recording) => (typeof recording === "string" ? [] : (recording.recorder ?? []))),
      );
      for (const used of [...Object.values(record.instruments), ...recorders]) expect(instruments).toContain(used);
    }
  });

  it("calls up in its reviews only figures that the tool has, of things that are there", () => {
    const figures: Readonly<Record<string, readonly string[]>> = {
      test: ["connections-to-target", "charge-unrecorded", "density-first", "density-last", "holding-voltage", "overcharge-water"],
      connection: ["charge-recorded"],
      recording: ["span", "highest-current", "sustained-current", "highest-voltage", "sustained-voltage"],
    };
    expect(names("content/reviews")).toEqual(names("data/chargers").map((name) => name.replace(/yaml$/, "md")));
    for (const name of names("content/reviews")) {
      const called = [...readFileSync(join(root, "content/reviews", name), "utf8").matchAll(/\[\[(\S+) of (\S+) in (\S+)\]\]/g)];
      expect(called.length, name).toBeGreaterThan(0);
      for (const [, figure = "", of = "", id = ""] of called) {
        const [kind = "", which = ""] = of.split("/");
        const truth = truthOf(id);
        expect(figures[kind], `${name}: ${of}`).toContain(figure);
        if (kind === "connection") expect(truth.connections.map((connection) => String(connection.number))).toContain(which);
        if (kind === "recording") expect(truth.recordings.map((recording) => recording.file)).toContain(which);
        expect(`${testRecord.parse(readYaml(`data/tests/${id}/test.yaml`)).charger}.md`).toBe(name);
      }
    }
  });

  it("states as taken out what the model's battery lacks at the start, to the 0.1 Ah that is noted", () => {
    for (const scenario of demoScenarios) {
      const { dischargedAh } = testRecord.parse(readYaml(`data/tests/${scenario.id}/test.yaml`));
      if (dischargedAh !== undefined) expect(Math.abs(scenario.battery.capacityAh - scenario.storedAh - dischargedAh)).toBeLessThan(0.051);
    }
  });
});
