import { describe, expect, it } from "vitest";
import { assembleCharger } from "../../../../lib/publish/assemble/charger.ts";
import { assembleRow } from "../../../../lib/publish/assemble/index-results.ts";
import { assembleTest } from "../../../../lib/publish/assemble/test.ts";
import { chargerResult } from "../../../../lib/publish/results.ts";
import { noForecast } from "../../../no-forecast.ts";
import { absorption, type BenchOptions, bulk, contextOf, logOf, recordingOf, sha256 } from "../../measure/bench.ts";

function assembled(...options: readonly BenchOptions[]) {
  const tests = options.map((one, i) => {
    const context = { ...contextOf(one), id: `test-${i + 1}` };
    return { context, result: assembleTest(context, [], []) };
  });
  const charger = tests[0]?.context.charger ?? contextOf().charger;
  return assembleCharger({
    id: "bench",
    charger,
    evidence: { file: "data/chargers/bench.yaml", sha256 },
    tests,
    prose: null,
    forecaster: noForecast,
  });
}

const claims = { currentA: { value: 5, words: "5 A", from: "label" } };
const at = (currentA: number): BenchOptions => ({
  claims,
  connections: [
    {
      onH: 0,
      offH: 10,
      recordings: [
        recordingOf(
          logOf([
            { ...bulk, a: () => currentA },
            { ...absorption, a: (h) => currentA * Math.exp(-h / 1.2) },
          ]),
        ),
      ],
    },
  ],
});

describe("the results of a charger", () => {
  it("keep to the public format, with no test as with two", () => {
    for (const charger of [assembled(), assembled(at(5), at(4))]) expect(chargerResult.parse(charger)).toEqual(charger);
  });

  it("say of a claim that tests differ about, and which test is shown", () => {
    const [claim] = assembled(at(5), at(4)).modes[0]?.claims ?? [];
    expect(claim).toMatchObject({
      outcome: "short of",
      figure: "test-2/recording/log.csv#charger-limited-current",
      why: expect.stringContaining("(test test-2)"),
      doubts: ["another test of this mode says: meets"],
    });
  });

  it("carry the forecast of a month connected into the verdict of the charger, and of each test's row", () => {
    const context = { ...contextOf(at(5)), id: "test-1" };
    const result = assembleTest(context, [], []);
    const month = { place: "cellar", temperatureC: 15, heldV: null, windowV: { low: 13.4, high: 14.1 }, inWindow: "above" as const };
    const season = [{ ...month, place: "cellar" as const, mainsKWh: null, waterG: null, restartsPerDay: null, topUpDays: null }];
    const charger = assembleCharger({
      id: "bench",
      charger: context.charger,
      evidence: { file: "data/chargers/bench.yaml", sha256 },
      tests: [{ context, result }],
      prose: null,
      forecaster: (question) => ({ ...noForecast(question), season }),
    });
    const warning = "should not stay connected at 15 °C";
    expect(charger.verdict.sentence).toContain(warning);
    expect(charger.modes[0]?.leftOnWarning).toContain("By its forecast a month connected at 15 °C");
    expect(assembleRow(context, result, charger).verdict.sentence).toContain(warning);
  });

  it("list what was not seen in sentences: a price nobody stated is absent, a recording that stopped is no finished charge", () => {
    const charger = assembled({ ...at(5), charger: { price: undefined } });
    expect(charger.price).toBeNull();
    expect(charger.figures).toMatchObject([{ id: "price", value: null, absent: { kind: "not stated" } }]);
    expect(charger.notSeen.join("\n")).not.toMatch(/ended by not known|ended by the charger/);
  });

  it("show every disclosure that the records leave out as not stated", () => {
    expect(assembled(at(5)).disclosures.filter((fact) => fact.value !== null)).toEqual([]);
  });
});
