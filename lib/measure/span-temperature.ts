import type { Evidence } from "../nouns/evidence.ts";

/** How warm the battery was over a span of time. */
export type BatteryTemperature = {
  /** Between these the battery was, °C: what was read, widened by the thermometer's error. */
  readonly lowC: number;
  readonly highC: number;
  /** Where it is known from, such as "read at visits 2 and 3". */
  readonly words: string;
  readonly evidence: readonly Evidence[];
};
