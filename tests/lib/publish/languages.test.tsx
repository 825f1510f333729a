/** Where the pages of a language stand, and what they say of statements that nobody has translated. */
import { renderToString } from "preact-render-to-string";
import { describe, expect, it } from "vitest";
import { pageLanguages } from "../../../lib/nouns/site.ts";
import { inLanguage, isPage, languageFolder } from "../../../lib/publish/links.ts";
import { renderCorrectionsPage } from "../../../lib/publish/pages/corrections-page.tsx";
import { Own, SiteProvider, siteContext } from "../../../lib/publish/pages/site-context.tsx";
import { Said } from "../../../lib/publish/pages/speech.tsx";
import type { SiteIndex } from "../../../lib/publish/results.ts";
import { fixture } from "../../pages/fixture.ts";

const index: SiteIndex = {
  ...fixture.index,
  site: { ...fixture.index.site, baseUrl: "https://bench.example/chargers/", languages: ["en", "pl", "de"] },
};

describe("the languages of a site", () => {
  it("are those stated, else the reviewer's where the pages speak it, else English", () => {
    expect(pageLanguages({ languages: ["de", "en"], language: "fr" })).toEqual(["de", "en"]);
    expect(pageLanguages({ languages: undefined, language: "pl-PL" })).toEqual(["pl"]);
    expect(pageLanguages({ languages: undefined, language: "fr" })).toEqual(["en"]);
  });

  it("stand at the root and in folders, with the same address below", () => {
    expect(languageFolder(["en", "pl"], "en")).toBe("");
    expect(languageFolder(["en", "pl"], "pl")).toBe("pl/");
    expect(inLanguage(["en", "pl"], "pl/find/")).toEqual({ language: "pl", here: "find/" });
    expect(inLanguage(["en", "pl"], "find/")).toEqual({ language: "en", here: "find/" });
  });

  it("tells pages from files", () => {
    expect(["", "find/", "chargers/a/#safe"].every(isPage)).toBe(true);
    expect(["data/index.json", "assets/site.css", "chargers/a/feed.xml"].some(isPage)).toBe(false);
  });
});

describe("a page in another language", () => {
  const polish = siteContext(index, "chargers/lantern-eight/", "pl");

  it("links to pages of its language, and to the one file there is", () => {
    expect(polish.linkTo("find/")).toBe("../../../pl/find/index.html");
    expect(polish.linkTo("data/index.json")).toBe("../../../data/index.json");
    expect(polish.linkIn("en")).toBe("../../../chargers/lantern-eight/index.html");
    expect(polish.linkIn("de")).toBe("../../../de/chargers/lantern-eight/index.html");
    expect(polish.root).toBe("../../../");
  });

  it("names its language, its canonical address and the same page elsewhere", () => {
    const html = renderCorrectionsPage(index, "de");
    expect(html).toContain('<html lang="de">');
    expect(html).toContain('<link rel="canonical" href="https://bench.example/chargers/de/corrections/"/>');
    expect(html).toContain('hreflang="pl" href="https://bench.example/chargers/pl/corrections/"');
    expect(html).toContain('hreflang="x-default" href="https://bench.example/chargers/corrections/"');
    expect(html).toContain('<a href="../../pl/corrections/index.html" hreflang="pl" lang="pl">Polski</a>');
  });

  it("offers no switch and no alternates where the site has one language", () => {
    const html = renderCorrectionsPage({ ...index, site: { ...index.site, languages: ["en"] } }, "en");
    expect(html).not.toContain("hreflang");
  });

  it("marks a statement that has no translation as English, and the records' own words as theirs", () => {
    const html = renderToString(
      <SiteProvider value={polish}>
        <Said text="A sentence of no phrase book whatever" />
        <Own>the yard's own words</Own>
      </SiteProvider>,
    );
    expect(html).toBe('<span lang="en">A sentence of no phrase book whatever</span><span lang="en">the yard\'s own words</span>');
  });
});
