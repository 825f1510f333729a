/** A page of the reviewer's own words: about, policy and so on. */
import type { Language } from "../../nouns/site.ts";
import type { ProseResult, SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Prose } from "./markup.tsx";
import { siteContext } from "./site-context.tsx";

/** How much of the text describes the page to a search engine, in characters; common practice. */
const descriptionLength = 160;

/** Renders a page of prose. */
export function renderProsePage(index: SiteIndex, prose: ProseResult, language: Language): string {
  const context = siteContext(index, `${prose.id}/`, language);
  const { formats, words } = context;
  return renderPage(context, {
    title: prose.title,
    description: prose.text.slice(0, descriptionLength),
    children: (
      <>
        {prose.by === null && prose.on === null ? null : (
          <p class="quiet">
            {[prose.by === null ? null : words.reference.writtenBy(prose.by), prose.on === null ? null : formats.formatDay(prose.on)]
              .filter((part) => part !== null)
              .join(", ")}
          </p>
        )}
        <Prose html={prose.html} language={prose.language} />
      </>
    ),
  });
}
