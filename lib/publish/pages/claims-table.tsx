/** What the maker states against what was measured, claim by claim. */

import type { JudgedClaim } from "../../nouns/finding.ts";
import { wordFor } from "../words/word-for.ts";
import type { FindFigure } from "./findings.tsx";
import { IntervalBar } from "./interval-bar.tsx";
import { Absent, Mark } from "./mark.tsx";
import { MethodLink, Own, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";
import { Columns, Table } from "./table.tsx";

type Props = { readonly caption: string; readonly claims: readonly JudgedClaim[]; readonly find: FindFigure };

/** An empty list of claims is a fact worth telling: the maker promises nothing that could be judged. */
export function ClaimsTable({ caption, claims, find }: Props) {
  const { none, columns } = useSite().words.parts.claims;
  if (claims.length === 0) return <p>{none}</p>;
  return (
    <Table caption={caption} class="claims cards">
      <Columns names={[columns.claim, columns.claimed, columns.measured, columns.drawn, columns.outcome, columns.why]} />
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
  const { words } = useSite();
  if (!claims.some((claim) => claim.claimed !== null)) return null;
  return <p class="key">{words.parts.claims.key}</p>;
}

function ClaimRow({ claim, find }: { claim: JudgedClaim; find: FindFigure }) {
  const { formats, words } = useSite();
  const { claims, wouldSettle } = words.parts;
  return (
    <tr>
      <th scope="row">
        <MethodLink method={claim.id}>
          <Said text={claim.label} />
        </MethodLink>
      </th>
      <td data-label={claims.columns.claimed} class="number">
        <Claimed claim={claim} />
      </td>
      <td data-label={claims.columns.measured} class="number">
        <Measured claim={claim} find={find} />
      </td>
      <td>
        <IntervalBar claim={claim} />
        {claim.claimed === null ? (
          <span class="quiet">{claims.notANumber}</span>
        ) : (
          <span class="quiet">{claims.accepted(formats.formatInterval(claim.acceptLow, claim.acceptHigh, claim.unit))}</span>
        )}
      </td>
      <td data-label={claims.columns.outcome}>
        <Mark kind={claim.outcome}>{words.marks.outcomes[claim.outcome]}</Mark>
        {claim.probability === null ? null : (
          <span class="quiet block">{claims.probability(formats.formatProbability(claim.probability))}</span>
        )}
      </td>
      <td class="words">
        <p>
          <Said text={claim.why} asSentence />
        </p>
        {claim.wouldSettle === null ? null : (
          <p class="settle">
            <span class="label">{wouldSettle}</span> <Said text={claim.wouldSettle} asSentence />
          </p>
        )}
        {claim.doubts.map((doubt) => (
          <p key={doubt} class="doubt">
            <Said text={doubt} asSentence />
          </p>
        ))}
        <p class="quiet">
          {claims.rule} <Said text={claim.rule} asSentence />
        </p>
      </td>
    </tr>
  );
}

function Claimed({ claim }: { claim: JudgedClaim }) {
  const { formats, words } = useSite();
  return (
    <>
      {claim.claimed !== null ? (
        formats.formatStated(claim.claimed, claim.unit)
      ) : claim.claimedWords === null ? (
        <Absent kind="not stated" />
      ) : (
        <Own>{claim.claimedWords}</Own>
      )}
      <span class="quiet block">
        {claim.claimed !== null && claim.claimedWords !== null ? `${words.marks.quoted(claim.claimedWords)}, ` : ""}
        {wordFor(words.marks.sources, claim.claimedFrom)}
      </span>
    </>
  );
}

function Measured({ claim, find }: { claim: JudgedClaim; find: FindFigure }) {
  const { linkTo, formats } = useSite();
  const target = claim.figure === null ? undefined : find(claim.figure);
  const text = claim.measured === null ? claim.measuredWords : formats.formatFigure({ ...claim, value: claim.measured, absent: null });
  if (text === null) return <Absent kind={claim.outcome === "not put to the test" ? "not put to the test" : "not measured"} />;
  const told = claim.measured === null ? <Said text={text} /> : text;
  return target === undefined ? <span>{told}</span> : <a href={linkTo(target)}>{told}</a>;
}
