/** The page for an address that leads nowhere. A server shows it under any address, so its links start at the site's root. */
import { relativeLink } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { defaultLanguage, Link, siteContext } from "./site-context.tsx";

/** Links from the server's root where the site knows its address; without one they are relative, which holds at the top level only. */
function linkFromAnywhere(baseUrl: string | null): (path: string) => string {
  if (baseUrl === null) return (path) => relativeLink("404.html", path);
  const root = new URL(baseUrl).pathname.replace(/\/?$/, "/");
  return (path) => root + relativeLink("", path);
}

/** Renders 404.html, of which a server knows one only: it is in the site's first language. */
export function renderNotFoundPage(index: SiteIndex): string {
  const relative = linkFromAnywhere(index.site.baseUrl);
  const context = siteContext(index, "404.html", defaultLanguage(index), { relative });
  const { notFound: words } = context.words.reference;
  return renderPage(context, {
    title: words.title,
    description: words.description,
    hidden: true,
    children: (
      <>
        <p class="lead">{words.lead}</p>
        <p>
          <Link to="">{words.all}</Link>
        </p>
      </>
    ),
  });
}
