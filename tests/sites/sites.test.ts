import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { chargerResult, siteIndex, type TestResult, testResult } from "../../lib/publish/results.ts";
import { run } from "../../lib/run.ts";
import { noForecast } from "../no-forecast.ts";
import { caseNames, pathIn, runCase } from "./cases.ts";

describe("a whole small workspace", () => {
  it("is there for each of the cases", () => {
    expect(caseNames.length).toBeGreaterThanOrEqual(8);
  });

  // What it is compared with was written by our own program: it guards against accidents and proves nothing. A missing file fails.
  it.each(caseNames)("%s: gives the results and problems that are checked in (tests/sites/write-expected.ts writes them)", async (name) => {
    const { results, problems } = await runCase(name);
    expect(problems).toBe(readFileSync(pathIn(name, "problems.txt"), "utf8"));
    expect(results).toBe(readFileSync(pathIn(name, "results.json"), "utf8"));
  });

  it.each(caseNames)("%s: keeps to the public format, and shows no value without a unit, a method and evidence", async (name) => {
    const { results } = await run(pathIn(name), { forecast: noForecast });
    if (results === undefined) throw new Error("nothing was published");
    siteIndex.parse(results.index);
    for (const charger of results.chargers) chargerResult.parse(charger);
    for (const test of results.tests) {
      testResult.parse(test);
      for (const figure of figuresOf(test)) {
        expect(figure.absent === null, figure.id).toBe(figure.value !== null);
        if (figure.value !== null) expect(figure.evidence, figure.id).not.toHaveLength(0);
        if (figure.absent !== null) expect(figure.absent.why.length, figure.id).toBeGreaterThan(5);
        if (figure.low !== null && figure.high !== null && figure.value !== null) {
          expect(figure.low, figure.id).toBeLessThanOrEqual(figure.value);
          expect(figure.high, figure.id).toBeGreaterThanOrEqual(figure.value);
        }
      }
    }
  });
});

describe("what a case is there to show", () => {
  const only = async (name: string): Promise<TestResult> => {
    const { results } = await run(pathIn(name), { forecast: noForecast });
    const test = results?.tests[0];
    if (test === undefined) throw new Error("nothing was published");
    return test;
  };
  const figure = (test: TestResult, id: string) => test.figures.find((candidate) => candidate.id === id);

  it("sealed-battery: no density is read, and nothing is said of charge by density", async () => {
    const test = await only("sealed-battery");
    expect(figure(test, "density-first")?.absent?.kind).toBe("not applicable");
    expect(figure(test, "charge-required")?.absent?.kind).toBe("not applicable");
    expect(
      test.examination.accounts.filter(({ witness }) => witness === "density").every(({ stateOfCharge }) => stateOfCharge === null),
    ).toBe(true);
  });

  it("no-hydrometer: whether the target was reached is not known, which is not the same as not reached", async () => {
    const test = await only("no-hydrometer");
    expect(test.findings.find((finding) => finding.id === "target-density")?.verdict).toBe("not put to the test");
    expect(figure(test, "connections-to-target")?.absent).toEqual({ kind: "not measured", why: "no density was read" });
  });

  it("log-without-current: charge is absent with the reason, and the current claim is not put to the test", async () => {
    const test = await only("log-without-current");
    expect(figure(test, "charge-recorded")?.absent).toEqual({ kind: "not recorded", why: "the recorder logs no current" });
    expect(test.claims.map((claim) => claim.outcome)).toEqual(["not put to the test", "not put to the test", "not put to the test"]);
  });

  it("elapsed-without-start: the log cannot be placed, so charge that nobody recorded cannot be told", async () => {
    const test = await only("elapsed-without-start");
    expect(figure(test, "charge-unrecorded")?.absent?.kind).toBe("cannot tell");
    expect(figure(test, "hours-to-target")?.absent?.kind).toBe("cannot tell");
    expect(figure(test, "charge-recorded")?.value).toBeGreaterThan(15);
    expect(test.timeline.words).toContain("began is not known");
  });

  it("two-currencies: each price keeps its currency, and no cost is made of two", async () => {
    const { results } = await run(pathIn("two-currencies"), { forecast: noForecast });
    const [euro, franc] = results?.tests ?? [];
    if (euro === undefined || franc === undefined) throw new Error("two tests were expected");
    expect(figure(euro, "cost-per-result")).toMatchObject({ unit: "EUR", absent: null });
    expect(figure(franc, "cost-per-result")?.absent?.why).toMatch(/EUR.*no rate to CHF/);
    expect(results?.chargers.map((charger) => charger.price?.currency)).toEqual(["EUR", "CHF"]);
  });

  it("one-test-broken: the other test is published, and the broken one is named with why", async () => {
    const { results } = await run(pathIn("one-test-broken"), { forecast: noForecast });
    expect(results?.tests.map((test) => test.id)).toEqual(["good"]);
    expect(results?.index.notPublished).toEqual([{ what: "test broken", why: "its files have an error" }]);
    expect(results?.index.rows.map((row) => row.test.id)).toEqual(["good"]);
  });

  it("nothing-stated: no interval is made up for instruments whose accuracy is not stated, and every disclosure says so", async () => {
    const { results } = await run(pathIn("nothing-stated"), { forecast: noForecast });
    const test = results?.tests[0];
    if (test === undefined) throw new Error("nothing was published");
    expect(figure(test, "charge-recorded")).toMatchObject({
      low: null,
      high: null,
      doubts: [expect.stringContaining("no accuracy is stated")],
    });
    expect(results?.chargers[0]?.disclosures.every((fact) => fact.value === null)).toBe(true);
    expect(test.claims).toEqual([]);
  });

  it("no recording of any case is said to have been ended by the charger: in all of them current flows at the last row", async () => {
    for (const name of caseNames) {
      const { results } = await run(pathIn(name), { forecast: noForecast });
      for (const recording of results?.tests.flatMap((test) => test.recordings) ?? []) {
        expect(recording.ending.by, `${name} ${recording.id}`).not.toBe("charger");
        expect(recording.characteristic.complete, name).toBe(false);
      }
    }
  });
});

function figuresOf(test: TestResult): TestResult["figures"] {
  return [
    ...test.figures,
    ...test.connections.flatMap((connection) => connection.figures),
    ...test.recordings.flatMap((recording) => recording.figures),
    ...test.readings.flatMap((reading) => reading.figures),
  ];
}
