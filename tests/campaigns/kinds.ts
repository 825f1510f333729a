/** The kinds of campaign, each made so that one cause, or none, is true. */
import type { CauseId } from "../../lib/reconcile/index.ts";

export const campaignKinds = {
  "recorder-stopped-early": "charge-unrecorded",
  "stratified-acid": "acid-not-mixed",
  "honest-slow-charger": "nothing-to-explain",
  "weak-cell": "weak-cell",
  "wrong-rating": "rating-wrong",
  "hydrometer-offset": "hydrometer-off",
  "read-too-soon": "surface-charge",
} as const satisfies Readonly<Record<string, CauseId>>;

export type CampaignKind = keyof typeof campaignKinds;
export const kindNames = Object.keys(campaignKinds) as CampaignKind[];
