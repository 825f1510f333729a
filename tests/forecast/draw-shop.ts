/**
 * A made-up shop: one charger of each kind, and a handful of test batteries on which each of them is tested, so that of a test left out both
 * the charger and the battery are known from others.
 */
import { seededRandom } from "../generator/random.ts";
import { chargerKinds, type DrawnBattery, type DrawnCampaign, drawBattery, drawCharger, drawVisit } from "./draw-campaign.ts";

/** How many batteries the shop keeps for tests. */
export const batteriesAShop = 4;

/**
 * How far a battery's hard sulphate is from its own level at each test, standard deviation of the logarithm. The demo's batteries begin every
 * test with the same, as a shop's would that discharged them always alike and let them stand always as long. No shop is so exact.
 */
export const usualHardSpread = 0.1;

/**
 * Draws a shop: a campaign for each charger kind, on the same batteries in the same order, with one recorder and one hydrometer.
 * A battery stays what it is but for its hard sulphate; how flat it is, the room and the recorder's patience are each test's own.
 * @param hardSpread  see usualHardSpread; the same seed gives the same shop but for this
 */
export function drawShop(seed: number, hardSpread = usualHardSpread): DrawnCampaign[] {
  const random = seededRandom(seed * 2003 + 11);
  const between = (low: number, high: number): number => low + (high - low) * random.uniform();
  const batteries = Array.from({ length: batteriesAShop }, () => drawBattery(between(40, 75), between, random));
  const recorder = { gainA: 1 + 0.005 * random.normal(), offsetV: 0.01 * random.normal() };
  const hydrometerError = 0.003 * random.normal();
  return chargerKinds.map((kind, place) => ({
    seed,
    noiseSeed: seed * 7919 + (place + 1) * 1_000_003,
    kind,
    // From C/4 to C/19 of the batteries above.
    charger: drawCharger(kind, between(4, 10), random),
    recorder,
    hydrometerError,
    tests: batteries.map((battery) => drawVisit(hardenedAnew(battery, Math.exp(hardSpread * random.normal())), between, random)),
  }));
}

function hardenedAnew(drawn: DrawnBattery, factor: number): DrawnBattery {
  return { ...drawn, battery: { ...drawn.battery, hardAh: drawn.battery.hardAh * factor } };
}
