import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { describe, expect, it } from "vitest";
import { findBrokenLinks } from "../../../lib/publish/check-links.ts";

/** Checks a little site given as path → HTML. */
function check(pages: Record<string, string>, baseUrl: string | null = null, isNew?: (page: string) => boolean): string[] {
  const siteDir = mkdtempSync(join(tmpdir(), "links-"));
  try {
    for (const [path, html] of Object.entries(pages)) {
      mkdirSync(dirname(join(siteDir, path)), { recursive: true });
      writeFileSync(join(siteDir, path), html);
    }
    return findBrokenLinks(siteDir, baseUrl, undefined, isNew);
  } finally {
    rmSync(siteDir, { recursive: true });
  }
}

describe("the link check", () => {
  it("passes links to files, folders, fragments and the same page, and leaves other sites alone", () => {
    const index =
      '<a href="a/index.html#x"></a><a href="a/"></a><a href="#top"></a><i id="top"></i><a href="https://example.org/no"></a><a href="raw/n%20b.csv"></a>';
    expect(check({ "index.html": index, "a/index.html": '<i id="x"></i><a href="../index.html"></a>', "raw/n b.csv": "" })).toEqual([]);
  });

  it("names the page, the file and the fragment that are missing", () => {
    expect(check({ "index.html": '<a href="gone.html"></a>', "a/index.html": '<a href="../index.html#no"></a>' })).toEqual([
      'a/index.html: expected an element "no" in index.html, found none',
      'index.html: expected a file at "gone.html", found none',
    ]);
  });

  it("looks for an element where either page is new, and for a file in any case", () => {
    const link = (page: string): string => `<a href="${page}#gone"></a>`;
    const pages = { "a.html": link("b.html"), "b.html": link("c.html"), "c.html": link("d.html"), "d.html": '<a href="gone.csv"></a>' };
    expect(check(pages, null, (page) => page === "b.html")).toEqual([
      'a.html: expected an element "gone" in b.html, found none',
      'b.html: expected an element "gone" in c.html, found none',
      'd.html: expected a file at "gone.csv", found none',
    ]);
  });

  it("refuses a link that climbs out of the site", () => {
    expect(check({ "index.html": '<a href="../../etc/passwd"></a>' })).toHaveLength(1);
  });

  it("follows links from the server's root only under the site's own address", () => {
    const pages = { "404.html": '<a href="/sub/index.html"></a><a href="/other/index.html"></a>', "index.html": "" };
    expect(check(pages, "https://example.org/sub")).toEqual(['404.html: expected a file at "/other/index.html", found none']);
  });
});
