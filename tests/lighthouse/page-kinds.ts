/** One page of each kind of a built site; of chargers and tests the heaviest, so that whatever holds for it holds for all. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

type Id = { readonly id: string };
type Index = { readonly chargers: readonly Id[]; readonly tests: readonly Id[]; readonly pages: readonly Id[] };

/**
 * @param siteDir a built site
 * @returns addresses by kind, from the site's root; `side by side` has its two chargers in the query
 * Throws where the site has fewer than two chargers, no test, or no page of the reviewer's own: a kind would be missing.
 */
export function pageKindsOf(siteDir: string) {
  const index = JSON.parse(readFileSync(join(siteDir, "data/index.json"), "utf8")) as Index;
  const heaviestFirst = (items: readonly Id[], folder: string) =>
    items
      .map(({ id }) => ({ id, bytes: gzipSync(readFileSync(join(siteDir, folder, id, "index.html"))).length }))
      .sort((a, b) => b.bytes - a.bytes)
      .map(({ id }) => id);
  const [charger, other] = heaviestFirst(index.chargers, "chargers");
  const [test] = heaviestFirst(index.tests, "tests");
  const [prose] = heaviestFirst(index.pages, ".");
  if (charger === undefined || other === undefined || test === undefined || prose === undefined)
    throw new Error("expected two chargers, a test and a page of the reviewer's own at least");
  return {
    comparison: "/",
    charger: `/chargers/${charger}/`,
    test: `/tests/${test}/`,
    "side by side": `/compare/?charger=${charger}&charger=${other}`,
    find: "/find/",
    card: `/cards/${charger}/`,
    embed: `/embed/${charger}/`,
    "how to quote": "/quote/",
    "how to quote a charger": `/quote/${charger}/`,
    "versions of a result": `/results/${charger}/`,
    method: "/method/",
    "method entry": "/method/charge-recorded/",
    cautions: "/cautions/",
    signs: "/signs/",
    data: "/data/",
    corrections: "/corrections/",
    "the reviewer's own": `/${prose}/`,
  };
}
