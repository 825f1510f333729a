/** A claim and its measurement on one line: the accepted range as a band, the claim as a dashed rule, the measurement as a dot with its interval. */
import type { JudgedClaim } from "../../nouns/finding.ts";

const width = 200;
const height = 34;
const margin = 8;

type Span = { readonly low: number; readonly high: number };

/** The stretch of values that the drawing must hold, with a tenth to spare on both sides. */
function spanOf(claim: JudgedClaim): Span | undefined {
  const values = [claim.claimed, claim.acceptLow, claim.acceptHigh, claim.measured, claim.low, claim.high].filter(
    (value) => value !== null,
  );
  if (claim.claimed === null || values.length === 0) return undefined;
  const low = Math.min(...values);
  const high = Math.max(...values);
  const spare = (high - low || Math.abs(high) || 1) / 10;
  return { low: low - spare, high: high + spare };
}

/** Nothing where the claim is not a number. The same values stand in words beside it, so it is hidden from screen readers. */
export function IntervalBar({ claim }: { claim: JudgedClaim }) {
  const span = spanOf(claim);
  if (span === undefined || claim.claimed === null) return null;
  const x = (value: number) => Number((margin + ((value - span.low) / (span.high - span.low)) * (width - 2 * margin)).toFixed(1));
  const bandFrom = claim.acceptLow === null ? 0 : x(claim.acceptLow);
  const bandTo = claim.acceptHigh === null ? width : x(claim.acceptHigh);
  return (
    <svg class="interval" viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
      <rect x={bandFrom} y="6" width={Math.max(1, bandTo - bandFrom)} height="22" class="interval-band" />
      <line x1="0" x2={width} y1="17" y2="17" class="interval-axis" />
      <line x1={x(claim.claimed)} x2={x(claim.claimed)} y1="2" y2="32" class="interval-claim" />
      {claim.low === null || claim.high === null ? null : (
        <path d={`M${x(claim.low)} 11v12M${x(claim.low)} 17H${x(claim.high)}M${x(claim.high)} 11v12`} class="interval-whisker" />
      )}
      {claim.measured === null ? null : <circle cx={x(claim.measured)} cy="17" r="4.5" class="interval-dot" />}
    </svg>
  );
}
