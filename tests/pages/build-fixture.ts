/** Builds the fixture into a folder: npx tsx tests/pages/build-fixture.ts DIR. Runs in a process of its own, as the command line does. */
import { renderSite } from "../../lib/publish/render-site.ts";
import { writeFixture } from "./fixture.ts";

const siteDir = process.argv[2];
if (siteDir === undefined) throw new Error("expected a folder to build into");
writeFixture(siteDir);
const { pages } = await renderSite(siteDir);
process.stdout.write(`${pages}\n`);
