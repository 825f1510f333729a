/** The first sentence a buyer reads, made from claims and findings; nothing in it that they do not carry. */
import type { Finding, JudgedClaim } from "../../nouns/finding.ts";
import { formatStated } from "../../units/format.ts";

export type Verdict = { readonly sentence: string; readonly weight: Finding["weight"] };

/** Sums up claims and findings of one test, or of all tests of a charger. */
export function makeVerdict(claims: readonly JudgedClaim[], findings: readonly Finding[]): Verdict {
  const parts = [aboutCurrent(claims), aboutVoltage(claims), aboutTarget(findings), aboutLeaving(findings)].filter(
    (part) => part !== undefined,
  );
  const sentence = parts.length === 0 ? "Too little was recorded to say what this charger does." : `${parts.map(capitalised).join(". ")}.`;
  return { sentence, weight: weigh(claims, findings) };
}

const capitalised = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Of one claim made for several modes, the one that a buyer must know of: a claim that is missed before one that is met. */
function mostTelling(claims: readonly JudgedClaim[]): JudgedClaim | undefined {
  const order: readonly JudgedClaim["outcome"][] = ["short of", "above", "meets", "cannot tell", "not put to the test"];
  return [...claims].sort((a, b) => order.indexOf(a.outcome) - order.indexOf(b.outcome))[0];
}

function aboutCurrent(claims: readonly JudgedClaim[]): string | undefined {
  const claim = mostTelling(claims.filter((candidate) => candidate.id === "claim-current"));
  if (claim === undefined) return undefined;
  const label = claim.claimed === null ? "" : formatStated(claim.claimed, claim.unit);
  const measured = claim.measured === null ? "" : formatStated(Number(claim.measured.toPrecision(2)), claim.unit);
  switch (claim.outcome) {
    case "meets":
      return `gives the ${label} on its label`;
    case "short of":
      return `gives ${measured} of the ${label} on its label`;
    case "above":
      return `gives ${measured}, more than the ${label} on its label`;
    case "cannot tell":
      return `whether it gives the ${label} on its label cannot be told`;
    case "not put to the test":
      return `the ${label} on its label was not put to the test`;
  }
}

function aboutVoltage(claims: readonly JudgedClaim[]): string | undefined {
  const claim = mostTelling(claims.filter((candidate) => candidate.id === "claim-voltage"));
  if (claim?.measured === null || claim?.measured === undefined || claim.claimed === null) return undefined;
  if (claim.outcome === "above") return `goes to ${claim.measured.toFixed(1)}\u202FV, above the ${formatStated(claim.claimed, "V")} stated`;
  return claim.outcome === "short of"
    ? `stays at ${claim.measured.toFixed(1)}\u202FV, short of the ${formatStated(claim.claimed, "V")} stated`
    : undefined;
}

function aboutTarget(findings: readonly Finding[]): string | undefined {
  const finding = findings.find((candidate) => candidate.id === "target-density");
  switch (finding?.verdict) {
    case "reached":
      return "brought the battery back to full density";
    case "not reachable as it goes":
      return "did not bring the battery back to full density, and will not as it goes";
    case "not reached":
    case "not reached yet":
      return "did not bring the battery back to full density in this test";
    case "cannot be read":
      return "full density cannot be read on this sealed battery";
    default:
      return undefined;
  }
}

function aboutLeaving(findings: readonly Finding[]): string | undefined {
  if (findings.some((finding) => finding.id === "letting-go" && finding.verdict === "no"))
    return "holds a gassing voltage for days: do not leave it connected";
  const finding = findings.find((candidate) => candidate.id === "float-window");
  if (finding?.verdict === "no") return "do not leave it connected";
  return finding?.weight === "good" ? "may stay connected, by the voltage it holds" : undefined;
}

function weigh(claims: readonly JudgedClaim[], findings: readonly Finding[]): Finding["weight"] {
  const main = claims.filter((claim) => claim.id === "claim-current" || claim.id === "claim-voltage");
  if (
    findings.some((finding) => finding.weight === "bad") ||
    claims.some((claim) => claim.outcome === "short of" || claim.outcome === "above")
  )
    return "bad";
  const target = findings.find((finding) => finding.id === "target-density");
  if (target?.weight === "good" && main.every((claim) => claim.outcome === "meets")) return "good";
  if (findings.some((finding) => finding.weight === "caution")) return "caution";
  return target?.weight === "untested" && main.every((claim) => claim.outcome === "not put to the test") ? "untested" : "unsure";
}
