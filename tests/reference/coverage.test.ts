import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type Check, compare } from "./check.ts";
import { findCoverage, renderCoverage } from "./coverage.ts";
import { field, readReferenceTable } from "./read-table.ts";
import { evaluators, notReproduced } from "./worked-examples/evaluators.ts";

const coverage = findCoverage();

/** What is off, in a form whose failure message tells everything. */
function findOff(checks: readonly Check[]): string[] {
  return checks
    .filter(({ verdict }) => verdict === "off")
    .map(({ id, quantity, expected, ours, tolerance }) => `${id} ${quantity}: expected ${expected} ± ${tolerance}, ours ${ours}`);
}

describe("reference numbers", () => {
  it("computes or lists every worked example, and none that is not in the table", () => {
    const ids = readReferenceTable("worked-examples/worked-examples.csv").map((row) => field(row, "id"));
    expect(ids).toHaveLength(106);
    expect([...Object.keys(evaluators), ...Object.keys(notReproduced)].sort()).toEqual([...ids].sort());
  });

  it("reproduces every worked example within its own tolerance", () => {
    expect(findOff(coverage.workedExamples)).toEqual([]);
  });

  it("leaves out no worked example without a reason", () => {
    const left = coverage.workedExamples.filter(({ verdict }) => verdict === "not computed");
    expect(left.map(({ id }) => id)).toEqual(Object.keys(notReproduced));
    for (const { reason } of left) expect(reason.length).toBeGreaterThan(20);
  });

  it("agrees with every density from 0 to 50 °C within what its source is known to be off by", () => {
    expect(coverage.acidDensities).toHaveLength(637);
    expect(findOff(coverage.acidDensities)).toEqual([]);
    // 60 °C: one row of water, eighteen of the global fit, five of the recalled tables.
    expect(coverage.acidDensities.filter(({ verdict }) => verdict === "not computed")).toHaveLength(24);
  });

  it("agrees with every rest voltage, and the density that stands beside it", () => {
    expect(coverage.restVoltages).toHaveLength(2 * 138);
    expect(findOff(coverage.restVoltages)).toEqual([]);
  });

  it("reproduces all certified fits from both starting points", () => {
    // 40 parameters with their errors, and one deviation for each of the 13 sets, from two starts.
    expect(coverage.nistFits).toHaveLength(2 * (2 * 40 + 13));
    expect(findOff(coverage.nistFits)).toEqual([]);
  });

  it("would notice a number beyond its tolerance, a missing one, and another text", () => {
    const row = { id: "x", group: "x", quantity: "x", tolerance: 0.01, unit: "", reason: "" };
    expect(compare({ ...row, expected: 1 }, 1.01).verdict).toBe("ok");
    expect(compare({ ...row, expected: 1 }, 1.0101).verdict).toBe("off");
    expect(compare({ ...row, expected: 1 }, Number.NaN).verdict).toBe("off");
    expect(compare({ ...row, expected: "meets" }, "short of").verdict).toBe("off");
    expect(compare({ ...row, expected: "1" }, 1).verdict).toBe("off");
  });
});

describe("docs/reference-checks.md", () => {
  it("is up to date; run npx tsx tests/reference/write-coverage.ts where it is not", () => {
    const written = readFileSync(new URL("../../docs/reference-checks.md", import.meta.url), "utf8");
    expect(written).toBe(renderCoverage(coverage));
  });
});
