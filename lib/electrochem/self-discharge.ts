/** Self-discharge. A battery loses 2 to 20 % a month at room temperature by kind and age, about twice that for each 10 K more (read). */

/** Mean hours in a month, the civil year's 8760 over twelve. */
export const hoursPerMonth = 730;

/**
 * Mean current that just makes up for self-discharge; less than this cannot be told from an idle charger.
 * @param capacityAh  rated capacity, Ah
 * @param percentPerMonth  share of the capacity lost in a month, %
 * @returns mA; NaN for NaN
 */
export function selfDischargeCurrentMA(capacityAh: number, percentPerMonth: number): number {
  return (capacityAh * (percentPerMonth / 100) * 1000) / hoursPerMonth;
}
