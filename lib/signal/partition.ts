/** A way to describe a range of samples, and what it costs to describe them so. */
export type PieceModel<K extends string> = {
  readonly kind: K;
  /** What one more piece of this kind costs, whatever its length. */
  readonly penalty: number;
  /** Misfit over [from, to). Cutting a range in two must never raise the sum of its misfits. */
  cost(from: number, to: number): number;
};

export type Piece<K extends string> = { readonly kind: K; readonly from: number; readonly to: number };

/**
 * The cheapest way to cut a series into pieces, each described by one of several models.
 *
 * Optimal partitioning (Jackson et al., IEEE Signal Processing Letters 12 (2005) 105) with the pruning of PELT (Killick, Fearnhead
 * and Eckley, Journal of the American Statistical Association 107 (2012) 1590), from memory: a place that could not have been the
 * last cut, even with the penalty given back, is never tried again, which keeps the work near linear where cuts are many.
 *
 * @param edges   places where a cut may stand, rising; the first and last are the ends of the series
 * @returns pieces in order that together cover the series; [] for fewer than two edges
 */
export function partition<K extends string>(edges: readonly number[], models: readonly PieceModel<K>[]): Piece<K>[] {
  const count = edges.length;
  if (count < 2 || models.length === 0) return [];
  const best = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  const cutBefore = new Int32Array(count).fill(-1);
  const modelOf = new Int16Array(count).fill(-1);
  best[0] = 0;
  let candidates: number[] = [0];
  for (let end = 1; end < count; end++) {
    const lowest: number[] = [];
    for (const start of candidates) {
      let withoutPenalty = Number.POSITIVE_INFINITY;
      models.forEach((model, index) => {
        const cost = model.cost(edges[start] as number, edges[end] as number);
        withoutPenalty = Math.min(withoutPenalty, cost);
        const total = (best[start] as number) + cost + model.penalty;
        if (total < (best[end] as number)) {
          best[end] = total;
          cutBefore[end] = start;
          modelOf[end] = index;
        }
      });
      lowest.push((best[start] as number) + withoutPenalty);
    }
    candidates = candidates.filter((_, index) => (lowest[index] as number) <= (best[end] as number));
    candidates.push(end);
  }
  const pieces: Piece<K>[] = [];
  for (let end = count - 1; end > 0; end = cutBefore[end] as number) {
    const model = models[modelOf[end] as number];
    const start = cutBefore[end] as number;
    if (model !== undefined) pieces.push({ kind: model.kind, from: edges[start] as number, to: edges[end] as number });
  }
  return pieces.reverse();
}
