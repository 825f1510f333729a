import { beforeAll, describe, expect, it } from "vitest";
import { chiSquareOfUniform, type Placement, placedQuantities, placeOnce, plainDesign } from "../../campaigns/self-consistency.ts";
import { seededRandom } from "../../generator/random.ts";

/** Chi-square of five bins, four degrees of freedom, exceeded once in a thousand true uniforms (table value). */
const onceInAThousand = 18.47;
const draws = 80;

describe("readings that the model itself makes", () => {
  let placements: readonly Placement[];
  beforeAll(() => {
    const random = seededRandom(20_260_403);
    placements = Array.from({ length: draws }, () => placeOnce(plainDesign, random));
  }, 120_000);

  it.each(Object.keys(placedQuantities))("leave the true %s anywhere in its posterior with equal chance", (name) => {
    const places = placements.map(({ below }) => below[name] ?? Number.NaN);
    expect(chiSquareOfUniform(places, 5)).toBeLessThan(onceInAThousand);
  });

  it("make the most probable combination true as often as is said", () => {
    const right = placements.filter(({ isRight }) => isRight).length;
    const said = placements.reduce((sum, { probabilityOfBest }) => sum + probabilityOfBest, 0);
    const variance = placements.reduce((sum, { probabilityOfBest: p }) => sum + p * (1 - p), 0);
    // Four standard deviations.
    expect(Math.abs(right - said)).toBeLessThan(4 * Math.sqrt(variance));
  });

  it("would show an inference that is too sure: places squeezed to the ends fail the same test", () => {
    const squeezed = placements.map(({ below }) => {
      const place = below["state of charge"] ?? 0.5;
      return place < 0.5 ? place ** 2 * 2 : 1 - (1 - place) ** 2 * 2;
    });
    expect(chiSquareOfUniform(squeezed, 5)).toBeGreaterThan(onceInAThousand);
  });
});
