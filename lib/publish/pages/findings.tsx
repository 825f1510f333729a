/** Findings: what, how sure, why, and what would settle it. */

import type { Finding } from "../../nouns/finding.ts";
import { findingAnchor } from "../links.ts";
import { Mark } from "./mark.tsx";
import { MethodLink, useSite } from "./site-context.tsx";
import { Said } from "./speech.tsx";

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
  const { words } = useSite();
  if (findings.length === 0) return <p>{words.parts.findings.none}</p>;
  return (
    <ul class="findings">
      {findings.map((finding, index) => (
        <li key={`${finding.id} ${index}`} id={isFirst(findings, index) ? findingAnchor(finding.id) : undefined}>
          <p class="finding-head">
            <Mark kind={finding.weight}>
              <strong>
                <Said text={finding.subject} />
              </strong>
              {finding.subject.endsWith("?") ? " " : ": "}
              <Said text={finding.verdict} />
            </Mark>
          </p>
          <p>
            <Said text={finding.sentence} />
          </p>
          {finding.doubts.map((doubt) => (
            <p key={doubt} class="doubt">
              <Said text={doubt} asSentence />
            </p>
          ))}
          {finding.wouldSettle === null ? null : (
            <p class="settle">
              <span class="label">{words.parts.wouldSettle}</span> <Said text={finding.wouldSettle} asSentence />
            </p>
          )}
          <Reasons finding={finding} find={find} linkTo={linkTo} />
        </li>
      ))}
    </ul>
  );
}

function Reasons({ finding, find, linkTo }: Pick<Props, "find" | "linkTo"> & { finding: Finding }) {
  const { index, words } = useSite();
  const judged = index.methods.some((entry) => entry.id === finding.id);
  if (finding.why.length === 0 && finding.figures.length === 0 && !judged) return null;
  return (
    <details>
      <summary>
        {words.parts.findings.why}
        <span class="unseen">
          : <Said text={finding.subject} />
        </span>
      </summary>
      <ul data-pagefind-ignore>
        {finding.why.map((reason) => (
          <li key={reason}>
            <Said text={reason} asSentence />
          </li>
        ))}
      </ul>
      <RestsOn references={finding.figures} find={find} linkTo={linkTo} />
      {judged ? (
        <p data-pagefind-ignore>
          <MethodLink method={finding.id}>{words.parts.findings.how}</MethodLink>
        </p>
      ) : null}
    </details>
  );
}

function RestsOn({ references, find, linkTo }: Pick<Props, "find" | "linkTo"> & { references: readonly string[] }) {
  const { words } = useSite();
  if (references.length === 0) return null;
  return (
    <p data-pagefind-ignore>
      {words.parts.findings.restsOn}{" "}
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
