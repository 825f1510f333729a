/** The only door for ready-made markup: drawings from our own charts, and prose that was rendered with HTML switched off. */
import { useSite } from "./site-context.tsx";

/** Places an SVG drawing made at build time. */
export function Drawing({ svg }: { svg: string }) {
  // Placed unescaped: the drawing is ours, made from checked results.
  return <div class="drawing" dangerouslySetInnerHTML={{ __html: svg }} />;
}

/** An address in prose that leads out of the site, or to a place on the same page. */
const leavesPage = /^(?:[a-z][a-z0-9+.-]*:|#|\/\/)/i;

/** Places a reviewer's words. A link within the site is written from the site's root ("/method/" or "method/") and made relative to the page here. */
export function Prose({ html, language }: { html: string; language: string }) {
  const { linkTo } = useSite();
  const relative = html.replace(/ href="([^"]*)"/g, (whole, target: string) =>
    leavesPage.test(target) ? whole : ` href="${linkTo(target.replace(/^(?:\.{0,2}\/)+/, ""))}"`,
  );
  // Placed unescaped: rendered from Markdown with HTML switched off, by contract.
  return <div class="prose" lang={language} dangerouslySetInnerHTML={{ __html: relative }} />;
}
