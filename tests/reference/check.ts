/** One outside number beside ours. */

/** Agrees, does not, or is not computed by us at all; the last two carry their reason. */
export type Verdict = "ok" | "off" | "not computed";

export type Check = {
  /** Row id, unique over all tables: W001, acid-density/12, … */
  readonly id: string;
  /** Table or source it is summed up under. */
  readonly group: string;
  readonly quantity: string;
  readonly expected: number | string;
  readonly ours: number | string | null;
  /** In the quantity's unit; 0 for texts. */
  readonly tolerance: number;
  readonly unit: string;
  readonly verdict: Verdict;
  /** Why the tolerance is what it is, or why the row is not computed. */
  readonly reason: string;
};

/** Compares our value with the expected one; a NaN of ours is never within tolerance. */
export function compare(check: Omit<Check, "verdict" | "ours">, ours: number | string): Check {
  const agrees =
    typeof ours === "number" && typeof check.expected === "number"
      ? Math.abs(ours - check.expected) <= check.tolerance * (1 + 1e-9)
      : ours === check.expected;
  return { ...check, ours, verdict: agrees ? "ok" : "off" };
}

/** A row that we do not compute, and why. */
export function notComputed(check: Omit<Check, "verdict" | "ours" | "reason">, reason: string): Check {
  return { ...check, ours: null, verdict: "not computed", reason };
}
