import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lastPoint, pathThrough, placeOn, spreadLabels } from "../../../_site-config/assets/side-by-side/drawing.ts";
import { type Choice, readChoices, writeChoices } from "../../../lib/publish/side-by-side/choice.ts";
import { lineUp, settingsOf } from "../../../lib/publish/side-by-side/line-up.ts";
import { chargerOf, modeOf, runOf } from "./side-by-side-samples.ts";

describe("the address", () => {
  it("names chargers in order, with mode and test where they were chosen", () => {
    expect(readChoices("?charger=a&charger=b.boost&charger=c.slow.first.run&over=share")).toEqual({
      chosen: [{ charger: "a" }, { charger: "b", mode: "boost" }, { charger: "c", mode: "slow", test: "first.run" }],
      over: "share",
    });
  });

  it("holds four at most, each once, and nothing for an empty one", () => {
    expect(readChoices("?charger=a&charger=a&charger=b&charger=c&charger=d&charger=e").chosen.map(({ charger }) => charger)).toEqual([
      "a",
      "b",
      "c",
      "d",
    ]);
    expect(readChoices("?charger=&over=moon")).toEqual({ chosen: [], over: "hours" });
    expect(writeChoices({ chosen: [], over: "hours" })).toBe("");
  });

  it("reads back what it wrote", () => {
    const id = fc.stringMatching(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    const choice = fc
      .record({ charger: id, mode: fc.option(id, { nil: undefined }), test: fc.option(id, { nil: undefined }) })
      .map(({ charger, mode, test }): Choice => ({ charger, ...(mode ? { mode, ...(test ? { test } : {}) } : {}) }));
    fc.assert(
      fc.property(
        fc.uniqueArray(choice, { maxLength: 4, selector: (one) => JSON.stringify(one) }),
        fc.constantFrom("hours" as const, "share" as const),
        (chosen, over) => {
          expect(readChoices(writeChoices({ chosen, over }))).toEqual({ chosen, over });
        },
      ),
      { numRuns: 50, seed: 6 },
    );
  });
});

describe("the line-up", () => {
  const two = chargerOf("two", [
    modeOf("normal", [runOf("on-75", { capacityAh: 75 }), runOf("on-60")]),
    modeOf("agm", [runOf("on-agm", { construction: "AGM" })]),
    modeOf("cold", []),
  ]);
  const one = chargerOf("one", [modeOf("only", [runOf("other-60")])]);
  const tests = (...chosen: Parameters<typeof lineUp>[0]): (string | undefined)[] => lineUp(chosen).map(({ run }) => run?.test.id);

  it("takes the tests that compare, where the reader named none", () => {
    expect(tests({ choice: { charger: "two" }, charger: two }, { choice: { charger: "one" }, charger: one })).toEqual([
      "on-60",
      "other-60",
    ]);
  });

  it("takes the most telling test of a charger by itself", () => {
    expect(tests({ choice: { charger: "two" }, charger: two })).toEqual(["on-75"]);
  });

  it("takes what the reader named, comparable or not", () => {
    expect(tests({ choice: { charger: "two", mode: "agm" }, charger: two }, { choice: { charger: "one" }, charger: one })).toEqual([
      "on-agm",
      "other-60",
    ]);
    expect(tests({ choice: { charger: "two", mode: "normal", test: "on-75" }, charger: two })).toEqual(["on-75"]);
  });

  it("shows an untested mode that was named, without a test", () => {
    const [entrant] = lineUp([{ choice: { charger: "two", mode: "cold" }, charger: two }]);
    expect(entrant?.mode.id).toBe("cold");
    expect(entrant?.run).toBeUndefined();
  });

  it("passes over a mode or test that is not there", () => {
    expect(tests({ choice: { charger: "two", mode: "gone", test: "gone" }, charger: two })).toEqual(["on-75"]);
  });

  it("shows two tests of a charger that was chosen twice", () => {
    const chosen = lineUp([
      { choice: { charger: "two" }, charger: two },
      { choice: { charger: "two", mode: "normal", test: "on-75" }, charger: two },
    ]);
    expect(chosen.map(({ run }) => run?.test.id)).toEqual(["on-60", "on-75"]);
  });

  it("letters the entrants in order, and leaves out a charger without modes", () => {
    const empty = chargerOf("empty", []);
    expect(
      lineUp([
        { choice: { charger: "empty" }, charger: empty },
        { choice: { charger: "two" }, charger: two },
        { choice: { charger: "one" }, charger: one },
      ]).map(({ letter, charger }) => `${letter} ${charger.id}`),
    ).toEqual(["A two", "B one"]);
  });

  it("offers every mode and test, untested modes last", () => {
    expect(settingsOf(two).map(({ mode, run }) => `${mode.id} ${run?.test.id}`)).toEqual([
      "normal on-75",
      "normal on-60",
      "agm on-agm",
      "cold undefined",
    ]);
  });
});

describe("drawing", () => {
  const axis = { from: 0, to: 10, fromPx: 100, toPx: 200 };

  it("places values along an axis, and all of them at the start of one without length", () => {
    expect(placeOn(axis, 5)).toBe(150);
    expect(placeOn({ ...axis, to: 0 }, 7)).toBe(100);
  });

  it("lifts the pen over a gap", () => {
    expect(pathThrough([0, 1, 2, 3], [0, null, 10, 0], axis, axis)).toBe("M100.0 100.0M120.0 200.0L130.0 100.0");
    expect(pathThrough([], [], axis, axis)).toBe("");
  });

  it("finds the last point that is whole", () => {
    expect(lastPoint([0, 1, 2], [5, 6, null])).toEqual({ x: 1, y: 6 });
    expect(lastPoint([null], [1])).toBeUndefined();
  });

  it("moves labels apart, keeping their order and the lower edge", () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 200, noNaN: true }), { maxLength: 4 }), (places) => {
        const spread = spreadLabels(places, 15, 190);
        const order = places.map((_, index) => index).sort((a, b) => (places[a] ?? 0) - (places[b] ?? 0));
        const inOrder = order.map((index) => spread[index] ?? 0);
        // A ten-thousandth of a pixel is rounding.
        inOrder.slice(1).forEach((place, index) => {
          expect(place - (inOrder[index] ?? 0)).toBeGreaterThanOrEqual(15 - 1e-4);
        });
        expect(Math.max(...spread, 0)).toBeLessThanOrEqual(190);
      }),
      { numRuns: 100, seed: 3 },
    );
  });

  it("leaves labels alone that are apart already", () => {
    expect(spreadLabels([100, 20], 15, 190)).toEqual([100, 20]);
  });
});
