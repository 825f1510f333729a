/** One entry for each method page: every figure, claim and finding, as its own file explains it. */
import { claimMethods } from "../../judge/claims/index.ts";
import { findings } from "../../judge/findings/index.ts";
import { everyFigure } from "../../measure/figures/index.ts";
import type { Rules } from "../../nouns/rules.ts";
import type { MethodEntry } from "../results.ts";
import { referenceMethods } from "./forecast.ts";
import { spreadMethods } from "./repeats.ts";

export function assembleMethods(rules: Rules): MethodEntry[] {
  const figures = everyFigure(rules).map(
    (figure): MethodEntry => ({
      id: figure.id,
      kind: "figure",
      label: figure.label,
      unit: typeof figure.unit === "string" ? figure.unit : "currency of the price",
      method: `${figure.id}/${figure.version}`,
      explain: figure.explain,
      formula: figure.formula,
      source: figure.source,
      checkedBy: [...figure.checkedBy],
    }),
  );
  const price: MethodEntry = {
    id: "price",
    kind: "figure",
    label: "Price",
    unit: "currency of the price",
    method: "price/1",
    explain: "What a buyer pays, with the day and the kind of shop, as the charger's record states it.",
    formula: null,
    source: "The charger's record.",
    checkedBy: [],
  };
  const spreads = spreadMethods.map(
    (spread): MethodEntry => ({
      ...spread,
      kind: "figure",
      unit: "that of the figure",
      method: `${spread.id}/1`,
      checkedBy: [...spread.checkedBy],
    }),
  );
  const references = referenceMethods.map(
    ({ version, ...entry }): MethodEntry => ({
      ...entry,
      kind: "figure",
      method: `${entry.id}/${version}`,
      checkedBy: [...entry.checkedBy],
    }),
  );
  const claims = claimMethods.map(
    (claim): MethodEntry => ({ ...claim, kind: "claim", method: `${claim.id}/1`, formula: null, checkedBy: [...claim.checkedBy] }),
  );
  const judged = findings.map(
    (finding): MethodEntry => ({
      id: finding.id,
      kind: "finding",
      label: finding.subject,
      unit: "",
      method: `${finding.id}/1`,
      explain: finding.explain,
      formula: null,
      source: finding.source,
      checkedBy: [...finding.checkedBy],
    }),
  );
  return [...figures, price, ...spreads, ...references, ...claims, ...judged];
}
