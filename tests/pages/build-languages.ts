/** Builds the fixture as a site of three languages: npx tsx tests/pages/build-languages.ts DIR. */
import { renderSite } from "../../lib/publish/render-site.ts";
import { fixture, writeFixture } from "./fixture.ts";

const siteDir = process.argv[2];
if (siteDir === undefined) throw new Error("expected a folder to build into");
writeFixture(siteDir, { ...fixture, index: { ...fixture.index, site: { ...fixture.index.site, languages: ["en", "pl", "de"] } } });
await renderSite(siteDir);
