/** Builds the fixture as a site that states its address and dates: npx tsx tests/pages/build-published.ts DIR invented|real. */
import { renderSite } from "../../lib/publish/render-site.ts";
import { publishedResults } from "../lib/publish/outward/published.ts";
import { writeFixture } from "./fixture.ts";

const [siteDir, kind] = process.argv.slice(2);
if (siteDir === undefined || (kind !== "invented" && kind !== "real"))
  throw new Error("expected a folder to build into, and invented or real");
writeFixture(siteDir, publishedResults({ invented: kind === "invented" }));
await renderSite(siteDir);
