/** The result of a charger for a frame in somebody else's page: always the newest, without script. */
import type { Language } from "../../nouns/site.ts";
import { chargerPath } from "../links.ts";
import { embedPath, versionPlace } from "../outward/addresses.ts";
import { renderBarePage } from "../outward/bare-document.tsx";
import { HeadlineGroups } from "../outward/headline-list.tsx";
import type { Quotable } from "../outward/quotation.ts";
import { ResultLine } from "../outward/result-line.tsx";
import { Warnings } from "../outward/warnings.tsx";
import { Mark } from "./mark.tsx";
import { siteContext, useSite } from "./site-context.tsx";
import { Said, said } from "./speech.tsx";

/** Renders the embed of a charger. Its links open beside the page that it stands in, never inside the frame. */
export function renderEmbedPage(quotable: Quotable, language: Language): string {
  const { index, charger, headlines, version, invented } = quotable;
  const context = siteContext(index, embedPath(charger.id), language, { invented });
  const { embed: words } = context.words.outward;
  return renderBarePage(context, {
    title: words.title(charger.name, index.site.title),
    description: said(context, charger.verdict.sentence),
    kind: "embed",
    insteadShow: chargerPath(charger.id),
    children: (
      <main class="sheet">
        <p class="site">{index.site.title}</p>
        <h1>{charger.name}</h1>
        <Warnings quotable={quotable} />
        <p class="verdict">
          <Mark kind={charger.verdict.weight}>
            <Said text={charger.verdict.sentence} />
          </Mark>
        </p>
        <HeadlineGroups headlines={headlines} />
        <p class="links">
          <Outside to={chargerPath(charger.id)}>{words.evidence}</Outside>
          <Outside to={versionPlace(charger.id, version)}>{words.versions}</Outside>
        </p>
        <p class="small">
          <ResultLine quotable={quotable} />
        </p>
      </main>
    ),
  });
}

function Outside({ to, children }: { to: string; children: string }) {
  return (
    <a href={useSite().linkTo(to)} target="_blank" rel="noopener">
      {children}
    </a>
  );
}
