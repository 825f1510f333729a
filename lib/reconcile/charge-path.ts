/**
 * How the missing charge shrinks while current flows: far from full the plates take nearly all, near full gas takes more and more.
 *
 * With x the missing share of the capacity and a the gassing scale, the share that the plates take is b·(1 − exp(−x/a)), b a little under
 * one. Then dx/dq = −b·(1 − exp(−x/a))/C, whose solution is closed:  x(q) = a·ln(1 + (exp(x0/a) − 1)·exp(−b·q/(C·a))).
 */

/** Beyond this exponent 1 is lost beside the exponential, and the path is a straight line. */
const straightFrom = 36;

/**
 * The missing share after a charge.
 * @param missing  share of the capacity missing before, 0 or more
 * @param throughShare  charge at the posts over the capacity; negative for a discharge, which the plates give in full
 * @param gassingScale  missing share at which gas takes 37 % of the charge; more than 0
 * @param bulkAcceptance  share that the plates take far from full, 0 to 1
 * @returns the missing share, never negative; NaN for NaN
 */
export function missingAfterCharge(missing: number, throughShare: number, gassingScale: number, bulkAcceptance: number): number {
  if (throughShare <= 0) return missing - throughShare;
  const before = missing / gassingScale;
  const gone = (bulkAcceptance * throughShare) / gassingScale;
  if (before - gone > straightFrom) return gassingScale * (before - gone);
  return gassingScale * Math.log1p(Math.exp(before - gone) - Math.exp(-gone));
}
