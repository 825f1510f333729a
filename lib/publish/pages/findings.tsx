/** Findings: what, how sure, why, and what would settle it. */

import type { Finding } from "../../nouns/finding.ts";
import { findingAnchor } from "../links.ts";
import { Mark } from "./mark.tsx";
import { sentence } from "./sentence.ts";
import { MethodLink, useSite } from "./site-context.tsx";

/** Turns a figure's reference (of#id) into a link target; undefined where no page shows it. */
export type FindFigure = (reference: string) => string | undefined;

type Props = {
  readonly findings: readonly Finding[];
  readonly find: FindFigure;
  readonly linkTo: (target: string) => string;
};

/** Several tests of a charger can give the same finding; a link by its id leads to the first. */
const isFirst = (findings: readonly Finding[], index: number) =>
  findings.findIndex((finding) => finding.id === findings[index]?.id) === index;

/** A list of findings, the reasons folded away until asked for. An empty list says that nothing was judged. */
export function Findings({ findings, find, linkTo }: Props) {
  if (findings.length === 0) return <p>Nothing was judged here.</p>;
  return (
    <ul class="findings">
      {findings.map((finding, index) => (
        <li key={`${finding.id} ${index}`} id={isFirst(findings, index) ? findingAnchor(finding.id) : undefined}>
          <p class="finding-head">
            <Mark kind={finding.weight}>
              <strong>{finding.subject}</strong>
              {finding.subject.endsWith("?") ? " " : ": "}
              {finding.verdict}
            </Mark>
          </p>
          <p>{finding.sentence}</p>
          {finding.doubts.map((doubt) => (
            <p key={doubt} class="doubt">
              {sentence(doubt)}
            </p>
          ))}
          {finding.wouldSettle === null ? null : (
            <p class="settle">
              <span class="label">What would settle it</span> {sentence(finding.wouldSettle)}
            </p>
          )}
          <Reasons finding={finding} find={find} linkTo={linkTo} />
        </li>
      ))}
    </ul>
  );
}

function Reasons({ finding, find, linkTo }: Pick<Props, "find" | "linkTo"> & { finding: Finding }) {
  const judged = useSite().index.methods.some((entry) => entry.id === finding.id);
  if (finding.why.length === 0 && finding.figures.length === 0 && !judged) return null;
  return (
    <details>
      <summary>
        Why<span class="unseen">: {finding.subject}</span>
      </summary>
      <ul data-pagefind-ignore>
        {finding.why.map((reason) => (
          <li key={reason}>{sentence(reason)}</li>
        ))}
      </ul>
      <RestsOn references={finding.figures} find={find} linkTo={linkTo} />
      {judged ? (
        <p data-pagefind-ignore>
          <MethodLink method={finding.id}>How this is judged</MethodLink>
        </p>
      ) : null}
    </details>
  );
}

function RestsOn({ references, find, linkTo }: Pick<Props, "find" | "linkTo"> & { references: readonly string[] }) {
  if (references.length === 0) return null;
  return (
    <p data-pagefind-ignore>
      Rests on{" "}
      {references.map((reference, index) => {
        const target = find(reference);
        return (
          <span key={reference}>
            {index === 0 ? "" : " · "}
            {target === undefined ? reference : <a href={linkTo(target)}>{reference}</a>}
          </span>
        );
      })}
    </p>
  );
}
