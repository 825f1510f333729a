/** What the records state of money: price, uses, electricity, rates of exchange and the owner's time. */
import { type CostInputs, type Estimate, known, rateBetween } from "../project/index.ts";
import { type NotMeasured, notMeasured } from "./define.ts";
import type { TestContext } from "./test-context.ts";

/** Where nobody states the uses of a charger's life, they may be this many times fewer or more than the site's rule; our assumption. */
const unstatedUsesFactor = 2;

export type StatedCosts = { readonly inputs: Omit<CostInputs, "energy">; readonly doubts: readonly string[] };

/**
 * All of a cost but its energy.
 * @param visits  how many of the owner's visits it takes
 * @returns inputs in the currency of the charger's price, with what limits trust in them; an absence where a price is not stated
 */
export function statedCosts({ charger, site, rules }: TestContext, visits: number): StatedCosts | NotMeasured {
  const { price } = charger;
  const { electricity, ownersTime } = site;
  if (price === undefined) return notMeasured("not stated", "no price of the charger is stated");
  if (electricity === undefined) return notMeasured("not stated", "the site states no price of electricity");
  const uses = usesInLife(charger.lifeUses, rules.lifeUses);
  return {
    inputs: {
      currency: price.currency,
      rates: ratesOf(site),
      purchase: { amount: known(price.amount), currency: price.currency, ...(price.on === undefined ? {} : { on: price.on }) },
      usesInLife: uses.estimate,
      pricePerKWh: { amount: known(electricity.pricePerKWh), currency: electricity.currency, on: electricity.on },
      ...(ownersTime === undefined
        ? {}
        : {
            visits: {
              minutes: known(ownersTime.minutesPerVisit * visits),
              valuePerHour: { amount: known(ownersTime.valuePerHour), currency: ownersTime.currency },
            },
          }),
    },
    doubts: [
      uses.words,
      ownersTime === undefined ? "the owner's time is left out" : `the owner's time counts ${ownersTime.minutesPerVisit} min a connection`,
    ],
  };
}

/** What a kilowatt-hour costs in the currency of the charger's price; null where either is not stated, or no rate leads from one to the other. */
export function pricePerKWh({ charger: { price }, site }: TestContext): { amount: number; currency: string } | null {
  const { electricity } = site;
  if (price === undefined || electricity === undefined) return null;
  const rate = rateBetween(ratesOf(site), electricity.currency, price.currency);
  return rate === undefined ? null : { amount: electricity.pricePerKWh * rate.value, currency: price.currency };
}

function ratesOf({ exchangeRates = [] }: TestContext["site"]): NonNullable<CostInputs["rates"]> {
  return exchangeRates.map(({ from, to, rate, on }) => ({ from, to, rate: known(rate), on }));
}

function usesInLife(stated: number | undefined, byRule: number): { estimate: Estimate; words: string } {
  if (stated !== undefined) return { estimate: known(stated), words: `spread over ${stated} uses, as the charger's record states` };
  return {
    estimate: { value: byRule, low: byRule / unstatedUsesFactor, high: byRule * unstatedUsesFactor },
    words: `spread over ${byRule} uses by the site's rule, within a factor of ${unstatedUsesFactor}`,
  };
}
