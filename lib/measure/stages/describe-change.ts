/** A segment's change in words, as it stands behind each stage's reason. */
import { elasticityOf, endsOf } from "./pieces.ts";
import { isToldByElasticity } from "./scene.ts";
import type { Segment } from "./segments.ts";
import type { Series } from "./series.ts";

/** Returns how voltage and current went from end to end, with the elasticity where that decides. */
export function describeChange(segment: Segment, series: Series): string {
  const ends = endsOf(series.voltagesV, series.currentsA, segment.from, segment.to);
  const elasticity = elasticityOf(ends);
  const isTold = isToldByElasticity(segment) && Number.isFinite(elasticity);
  const ratio = isTold ? `, elasticity ${elasticity < 100 ? elasticity.toFixed(1) : "over 100"}` : "";
  return `voltage ${fixed(ends.startV)} → ${fixed(ends.endV)} V, current ${fixed(ends.startA)} → ${fixed(ends.endA)} A${ratio}`;
}

/** Two decimals, with a real minus, and never a nought with a sign. */
function fixed(value: number): string {
  const text = value.toFixed(2);
  return text === "-0.00" ? "0.00" : text.replace("-", "−");
}
