/** JSON-LD blocks. They are data, not scripts: a browser never runs them, and a policy on scripts does not concern them. */
import type { Graph, Thing } from "schema-dts";

/** A thing with the name under which others refer to it. */
export type NamedThing = Exclude<Thing, string>;

/**
 * One block for everything that a page tells machines; "" where that is nothing.
 * "<" is written as an escape, so that no text of a record can close the block or open a comment in it.
 */
export function jsonLdBlock(things: readonly NamedThing[]): string {
  if (things.length === 0) return "";
  const graph: Graph = { "@context": "https://schema.org", "@graph": [...things] };
  return `<script type="application/ld+json">${JSON.stringify(graph).replaceAll("<", "\\u003c")}</script>`;
}
