/** A small drawing of voltage (solid) and current (dashed) over time, for a row of the comparison. */
import type { ComparisonRow } from "../results.ts";

type Profile = NonNullable<ComparisonRow["profile"]>;

const width = 96;
const height = 36;

/** One path; a missing sample lifts the pen, so that a gap is never bridged. */
function pathOf(hours: readonly number[], values: readonly (number | null)[], low: number, high: number): string {
  const lastHour = hours.at(-1) || 1;
  let path = "";
  let penDown = false;
  values.forEach((value, index) => {
    if (value === null) {
      penDown = false;
      return;
    }
    const x = ((hours[index] ?? 0) / lastHour) * width;
    const y = 3 + (1 - (value - low) / (high - low || 1)) * (height - 6);
    path += `${penDown ? "L" : "M"}${x.toFixed(1)} ${y.toFixed(1)}`;
    penDown = true;
  });
  return path;
}

type CurveProps = {
  readonly hours: readonly number[];
  readonly values: readonly (number | null)[];
  readonly fromZero: boolean;
  readonly name: string;
};

/** Nothing for a quantity that was not recorded. */
function Curve({ hours, values, fromZero, name }: CurveProps) {
  const seen = values.filter((value) => value !== null);
  if (seen.length === 0) return null;
  const low = fromZero ? Math.min(0, ...seen) : Math.min(...seen);
  return <path d={pathOf(hours, values, low, Math.max(...seen))} class={name} />;
}

/** Each curve fills the height by itself: the drawing shows the shape, the test page shows the scale. */
export function SmallProfile({ profile, words }: { profile: Profile; words: string }) {
  return (
    <svg class="small-profile" viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={words}>
      <Curve hours={profile.elapsedH} values={profile.voltageV} fromZero={false} name="profile-voltage" />
      <Curve hours={profile.elapsedH} values={profile.currentA} fromZero name="profile-current" />
    </svg>
  );
}
