/** Ticks at round numbers, and how times are written. */

/** Steps of a time axis, s: seconds, minutes, hours and days that people count in. */
const timeSteps = [1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 10_800, 21_600, 43_200, 86_400, 172_800, 604_800];

/** Round values between two ends, about so many. */
export function valueTicks(low: number, high: number, about: number): number[] {
  const raw = (high - low) / about;
  const power = 10 ** Math.floor(Math.log10(raw));
  const step = [1, 2, 5, 10].map((factor) => factor * power).find((candidate) => candidate >= raw) ?? 10 * power;
  return multiples(low, high, step);
}

/** Round times between two ends, about so many. Below a second the steps are those of plain numbers. */
export function timeTicks(fromS: number, toS: number, about: number): number[] {
  const raw = (toS - fromS) / about;
  if (raw < 1) return valueTicks(fromS, toS, about);
  return multiples(fromS, toS, timeSteps.find((step) => step >= raw) ?? 604_800);
}

function multiples(low: number, high: number, step: number): number[] {
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** Digits that tell neighbouring ticks apart. */
export function digitsFor(ticks: readonly number[]): number {
  const step = (ticks[1] ?? 1) - (ticks[0] ?? 0);
  return Math.min(6, Math.max(0, Math.ceil(-Math.log10(Math.abs(step) || 1) - 1e-9)));
}

/** Time from the first row: "3:05:09", with tenths and hundredths where they are asked for. */
export function elapsed(timeS: number, digits = 0): string {
  const whole = Number(timeS.toFixed(digits));
  const hours = Math.floor(whole / 3600);
  const minutes = Math.floor((whole % 3600) / 60);
  const seconds = (whole % 60).toFixed(digits).padStart(digits === 0 ? 2 : digits + 3, "0");
  return `${hours}:${String(minutes).padStart(2, "0")}:${seconds}`;
}
