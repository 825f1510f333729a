/** The page for an address that leads nowhere. A server shows it under any address, so its links start at the site's root. */
import { relativeLink } from "../links.ts";
import type { SiteIndex } from "../results.ts";
import { renderPage } from "./document.tsx";
import { Link, siteContext } from "./site-context.tsx";

/** Links from the server's root where the site knows its address; without one they are relative, which holds at the top level only. */
function linkFromAnywhere(baseUrl: string | null): (target: string) => string {
  if (baseUrl === null) return (target) => relativeLink("404.html", target);
  const root = new URL(baseUrl).pathname.replace(/\/?$/, "/");
  return (target) => root + relativeLink("", target);
}

/** Renders 404.html. */
export function renderNotFoundPage(index: SiteIndex): string {
  return renderPage(siteContext(index, "404.html", index.site.invented, linkFromAnywhere(index.site.baseUrl)), {
    title: "No such page",
    description: "This address leads nowhere on this site.",
    hidden: true,
    children: (
      <>
        <p class="lead">
          This address leads nowhere. Addresses of published results never change, so the link that brought you here may be mistyped.
        </p>
        <p>
          <Link to="">See all tested chargers</Link>
        </p>
      </>
    ),
  });
}
