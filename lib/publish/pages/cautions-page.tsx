/** What can hurt in this work, and what is usually done about it. */
import type { Language } from "../../nouns/site.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { siteContext } from "./site-context.tsx";

/** The places on the page, to which other pages link. */
const sections = ["acid", "hydrogen", "short-circuit", "frozen", "sealed", "mains"] as const;

/** Renders the cautions. */
export function renderCautionsPage(index: SiteIndex, language: Language): string {
  const context = siteContext(index, "cautions/", language);
  const { title, description, lead, dangers } = context.words.cautions;
  return renderPage(context, {
    title,
    description,
    children: (
      <>
        <p class="lead">{lead}</p>
        {sections.map((id) => (
          <section key={id}>
            <h2 id={id}>{dangers[id].name}</h2>
            <p>{dangers[id].danger}</p>
            <ul>
              {dangers[id].steps.map((step) => (
                <li key={step}>{step}</li>
              ))}
            </ul>
          </section>
        ))}
      </>
    ),
  });
}
