/** Runs whole campaigns: every test of every charger left out once. */
import { type ChargerKind, chargerKinds, drawCampaign } from "./draw-campaign.ts";
import { drawShop } from "./draw-shop.ts";
import { type BatteryEvidence, behaviourFrom, forecastFrom, learnBattery, learnCharger } from "./forecast-left-out.ts";
import { type ObservedTest, runTest } from "./run-test.ts";
import { type Scored, scoreForecast } from "./score.ts";

/** How many tests each charger goes through where every battery is a stranger. */
export const testsACharger = 4;

/** The same tests forecast twice: from the others alone, and with the first hours of their own log. */
export type CampaignScores = { readonly othersOnly: readonly Scored[]; readonly withOwnLog: readonly Scored[] };

/** Hours of a test's own log that the second forecast may see. */
export const ownLogH = 6;

/**
 * Every test on a battery of its own: runs one campaign for each seed and charger kind, leaves each test out once and scores its forecast.
 * The same seeds give the same scores.
 */
export function runCampaigns(seeds: readonly number[], kinds: readonly ChargerKind[] = chargerKinds): CampaignScores {
  return joined(seeds.flatMap((seed) => kinds.map((kind) => runCampaign(seed, kind))));
}

/** How a shop differs from the usual: how unlike its batteries are from test to test, and whose tests alone are left out. */
export type ShopOptions = { readonly hardSpread?: number; readonly leftOut?: readonly ChargerKind[] };

/** Every charger on every battery: of a test left out, the charger's tests on other batteries and the battery's on other chargers are known. */
export function runShops(seeds: readonly number[], options: ShopOptions = {}): CampaignScores {
  return joined(seeds.map((seed) => runShop(seed, options)));
}

function runCampaign(seed: number, kind: ChargerKind): CampaignScores {
  const campaign = drawCampaign(seed, kind, testsACharger);
  const observed = campaign.tests.map((_, index) => runTest(campaign, index));
  const chargers = observed.map(learnCharger);
  const batteries = observed.map((test) => learnBattery(test));
  return joined(
    observed.map((leftOut, index) =>
      scoreLeftOut(seed, kind, leftOut, behaviourFrom(chargers.toSpliced(index, 1)), {
        strangers: batteries.toSpliced(index, 1),
        earlier: [],
      }),
    ),
  );
}

function runShop(seed: number, { hardSpread, leftOut: kinds = chargerKinds }: ShopOptions): CampaignScores {
  const campaigns = drawShop(seed, hardSpread);
  const observed = campaigns.map((campaign) => campaign.tests.map((_, index) => runTest(campaign, index)));
  const testsOf = (battery: number): ObservedTest[] => observed.flatMap((tests) => tests.slice(battery, battery + 1));
  return joined(
    campaigns.flatMap(({ kind }, place) => {
      const tests = kinds.includes(kind) ? (observed[place] ?? []) : [];
      const chargers = tests.map(learnCharger);
      return tests.map((leftOut, battery) =>
        scoreLeftOut(seed, kind, leftOut, behaviourFrom(chargers.toSpliced(battery, 1)), {
          // Where the battery itself has been seen, others are not asked: their fits share the model's own failings and would add those.
          strangers: [],
          earlier: testsOf(battery).toSpliced(place, 1),
        }),
      );
    }),
  );
}

/** Scores one test twice; no rows where the charger's other tests recorded no charge at all. */
function scoreLeftOut(
  seed: number,
  kind: ChargerKind,
  leftOut: ObservedTest,
  behaviour: ReturnType<typeof behaviourFrom>,
  evidence: Omit<BatteryEvidence, "ownLogH">,
): CampaignScores {
  if (behaviour === undefined) return { othersOnly: [], withOwnLog: [] };
  const scoresOf = (hours: number): Scored[] =>
    scoreForecast(seed, kind, forecastFrom(behaviour, leftOut, { ...evidence, ownLogH: hours }), leftOut);
  return { othersOnly: scoresOf(0), withOwnLog: scoresOf(ownLogH) };
}

function joined(scores: readonly CampaignScores[]): CampaignScores {
  return { othersOnly: scores.flatMap(({ othersOnly }) => othersOnly), withOwnLog: scores.flatMap(({ withOwnLog }) => withOwnLog) };
}
