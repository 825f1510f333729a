import { describe, expect, it } from "vitest";
import { smoothSteps } from "../../../lib/signal/smooth-steps.ts";
import { seededRandom } from "../../generator/random.ts";

const step = 0.05;
const marked = (value: number): number => Math.round(value / step) * step;
const seconds = Float64Array.from({ length: 3600 }, (_, i) => i);

function worstMiss(true_: (s: number) => number, noise: number, from: number, to: number): number {
  const random = seededRandom(7);
  const smooth = smoothSteps(
    seconds,
    seconds.map((s) => marked(true_(s) + noise * random.normal())),
    step,
  );
  let worst = 0;
  for (let i = from; i < to; i++) worst = Math.max(worst, Math.abs((smooth[i] as number) - true_(i)));
  return worst;
}

describe("stairs taken out of a coarse channel", () => {
  it("leave a straight slope straight, but for the first and last tread", () => {
    const slope = (s: number) => 12.31 + 0.0002 * s;
    // A tread lasts 250 s. A passing is known to half a second, 0.0001 V of this slope; with noise, to some tens of seconds.
    expect(worstMiss(slope, 0, 300, 3300)).toBeLessThan(0.0005);
    expect(worstMiss(slope, step / 5, 300, 3300)).toBeLessThan(step / 4);
  });

  it("leave a held level held until it moves", () => {
    const heldThenRising = (s: number) => (s < 3000 ? 13.5 : 13.5 + 0.002 * (s - 3000));
    const smooth = smoothSteps(seconds, seconds.map(heldThenRising).map(marked), step);
    // The first tread of the slope lasts 12.5 s up to its passing and 25 s behind it: half of that reaches before the corner.
    expect(Array.from(smooth.subarray(0, 2990)).every((value) => Math.abs(value - 13.5) < 1e-9)).toBe(true);
  });

  it("keep a jump of more than a step where it is", () => {
    const values = seconds.map((s) => (s < 1000 ? 13.5 : 14.4));
    expect([...smoothSteps(seconds, values, step)]).toEqual([...values]);
  });

  it("take no notice of a value that trembles over the middle between two marks", () => {
    const values = seconds.map((s) => (s % 97 === 5 ? 13.55 : 13.5));
    expect(Math.max(...smoothSteps(seconds, values, step))).toBe(13.5);
  });

  it("are never further off than a step and a half", () => {
    const random = seededRandom(11);
    const values = seconds.map((s) => marked(13 + 0.4 * Math.sin(s / 200) + 0.01 * random.normal()));
    const smooth = smoothSteps(seconds, values, step);
    values.forEach((value, i) => {
      expect(Math.abs((smooth[i] as number) - value)).toBeLessThanOrEqual(1.5 * step);
    });
  });

  it("stay as they are where most values tremble, where there is no step, and where there is nothing", () => {
    const random = seededRandom(13);
    const values = seconds.map(() => marked(13 + step * random.normal()));
    expect([...smoothSteps(seconds, values, step)]).toEqual([...values]);
    expect([...smoothSteps(seconds.subarray(0, 3), Float64Array.of(1, 2, 3), 0)]).toEqual([1, 2, 3]);
    expect(smoothSteps(new Float64Array(0), new Float64Array(0), step)).toHaveLength(0);
    expect([...smoothSteps(Float64Array.of(0), Float64Array.of(13.5), step)]).toEqual([13.5]);
  });
});
