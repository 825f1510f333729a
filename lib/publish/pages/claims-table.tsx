/** What the maker states against what was measured, claim by claim. */

import type { JudgedClaim } from "../../nouns/finding.ts";
import { formatFigure, formatInterval, formatProbability, formatStated } from "../../units/format.ts";
import type { FindFigure } from "./findings.tsx";
import { IntervalBar } from "./interval-bar.tsx";
import { Absent, Mark } from "./mark.tsx";
import { sentence } from "./sentence.ts";
import { MethodLink, useSite } from "./site-context.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly caption: string; readonly claims: readonly JudgedClaim[]; readonly find: FindFigure };

/** An empty list of claims is a fact worth telling: the maker promises nothing that could be judged. */
export function ClaimsTable({ caption, claims, find }: Props) {
  if (claims.length === 0) return <p>Nothing was claimed for this mode that could be judged.</p>;
  return (
    <Table caption={caption} class="claims cards">
      <Columns names={["Claim", "Claimed", "Measured", "Claim and measurement", "Outcome", "Why"]} />
      <tbody>
        {claims.map((claim) => (
          <ClaimRow key={claim.id} claim={claim} find={find} />
        ))}
      </tbody>
    </Table>
  );
}

/** How to read the drawings of a page's claims; nothing where none of them is a number. */
export function ClaimsKey({ claims }: { claims: readonly JudgedClaim[] }) {
  if (!claims.some((claim) => claim.claimed !== null)) return null;
  return (
    <p class="key">
      In the drawings the band is what still counts as meeting the claim, the dashed rule is the claim itself, and the dot with its whiskers
      is the measurement with its 95 % interval.
    </p>
  );
}

function ClaimRow({ claim, find }: { claim: JudgedClaim; find: FindFigure }) {
  return (
    <tr>
      <th scope="row">
        <MethodLink method={claim.id}>{claim.label}</MethodLink>
      </th>
      <td data-label="Claimed" class="number">
        <Claimed claim={claim} />
      </td>
      <td data-label="Measured" class="number">
        <Measured claim={claim} find={find} />
      </td>
      <td>
        <IntervalBar claim={claim} />
        {claim.claimed === null ? (
          <span class="quiet">not a number</span>
        ) : (
          <span class="quiet">accepted: {formatInterval(claim.acceptLow, claim.acceptHigh, claim.unit)}</span>
        )}
      </td>
      <td data-label="Outcome">
        <Mark kind={claim.outcome}>{claim.outcome}</Mark>
        {claim.probability === null ? null : (
          <span class="quiet block">within the limits with probability {formatProbability(claim.probability)}</span>
        )}
      </td>
      <td class="words">
        <p>{sentence(claim.why)}</p>
        {claim.wouldSettle === null ? null : (
          <p class="settle">
            <span class="label">What would settle it</span> {sentence(claim.wouldSettle)}
          </p>
        )}
        {claim.doubts.map((doubt) => (
          <p key={doubt} class="doubt">
            {sentence(doubt)}
          </p>
        ))}
        <p class="quiet">Rule: {sentence(claim.rule)}</p>
      </td>
    </tr>
  );
}

function Claimed({ claim }: { claim: JudgedClaim }) {
  return (
    <>
      {claim.claimed === null ? (claim.claimedWords ?? <Absent kind="not stated" />) : formatStated(claim.claimed, claim.unit)}
      <span class="quiet block">
        {claim.claimed !== null && claim.claimedWords !== null ? `“${claim.claimedWords}”, ` : ""}
        {claim.claimedFrom}
      </span>
    </>
  );
}

function Measured({ claim, find }: { claim: JudgedClaim; find: FindFigure }) {
  const { linkTo } = useSite();
  const target = claim.figure === null ? undefined : find(claim.figure);
  const text = claim.measured === null ? claim.measuredWords : formatFigure({ ...claim, value: claim.measured, absent: null });
  if (text === null) return <Absent kind={claim.outcome === "not put to the test" ? "not put to the test" : "not measured"} />;
  return target === undefined ? <span>{text}</span> : <a href={linkTo(target)}>{text}</a>;
}
