import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type Piece, type PieceModel, partition } from "../../../lib/signal/partition.ts";

type Kind = "level" | "anything";

/** Two ways to describe a range of small whole numbers: by its mean, or freely at a fixed price a sample. */
function modelsFor(values: readonly number[]): PieceModel<Kind>[] {
  const misfit = (from: number, to: number): number => {
    const part = values.slice(from, to);
    const mean = part.reduce((sum, value) => sum + value, 0) / part.length;
    return part.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  };
  return [
    { kind: "level", penalty: 3, cost: misfit },
    { kind: "anything", penalty: 4, cost: (from, to) => 2 * (to - from) },
  ];
}

function costOf(pieces: readonly Piece<Kind>[], models: readonly PieceModel<Kind>[]): number {
  return pieces.reduce((sum, { kind, from, to }) => {
    const model = models.find((candidate) => candidate.kind === kind);
    if (model === undefined) throw new Error(`no model ${kind}`);
    return sum + model.penalty + model.cost(from, to);
  }, 0);
}

/** The cheapest cost over every way to cut, tried one by one. */
function cheapestByForce(length: number, models: readonly PieceModel<Kind>[]): number {
  let cheapest = Number.POSITIVE_INFINITY;
  for (let cuts = 0; cuts < 2 ** (length - 1); cuts++) {
    const edges = [0, ...Array.from({ length: length - 1 }, (_, i) => i + 1).filter((place) => (cuts >> (place - 1)) & 1), length];
    const cost = edges
      .slice(1)
      .reduce((sum, to, i) => sum + Math.min(...models.map((model) => model.penalty + model.cost(edges[i] ?? 0, to))), 0);
    cheapest = Math.min(cheapest, cost);
  }
  return cheapest;
}

describe("partition", () => {
  it("is as cheap as the cheapest of all cuts tried by force, and covers the series, on small series", () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 6 }), { minLength: 2, maxLength: 9 }), (values) => {
        const models = modelsFor(values);
        const pieces = partition(
          Array.from({ length: values.length + 1 }, (_, i) => i),
          models,
        );
        expect(costOf(pieces, models)).toBeCloseTo(cheapestByForce(values.length, models), 9);
        expect(pieces[0]?.from).toBe(0);
        expect(pieces.at(-1)?.to).toBe(values.length);
        expect(pieces.slice(1).map((piece) => piece.from)).toEqual(pieces.slice(0, -1).map((piece) => piece.to));
      }),
      { seed: 20260302, numRuns: 60 },
    );
  });

  it("cuts only where an edge is", () => {
    const models = modelsFor([0, 0, 0, 9, 9, 9]);
    expect(partition([0, 2, 6], models).map(({ from, to }) => [from, to])).toEqual([
      [0, 2],
      [2, 6],
    ]);
    expect(partition([0, 3, 6], models).map(({ kind, from, to }) => [kind, from, to])).toEqual([
      ["level", 0, 3],
      ["level", 3, 6],
    ]);
  });

  it("has nothing to cut without edges or models", () => {
    expect(partition([0], modelsFor([1]))).toEqual([]);
    expect(partition([], modelsFor([]))).toEqual([]);
    expect(partition([0, 5], [])).toEqual([]);
  });
});
