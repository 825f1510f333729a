/** Styles and scripts: written as CSS and TypeScript under _site-config/assets, published small and plain. */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { buildSync, transformSync } from "esbuild";

const scripts = ["sort", "search", "compare", "explore-button"];
/** The first is every page's, the second is for pages that leave the site; the others add what one page alone needs. */
const styles = ["site.css", "card.css", "find.css", "side-by-side.css"];
/** Scripts of several modules, each a folder with an index.ts; only the page that needs one fetches it, the log explorer's when asked for. */
const bundles = ["explore", "find", "side-by-side"];

/** All that is published, by its path from the site's root. */
export const assetPaths: readonly string[] = [...[...scripts, ...bundles].map((name) => `${name}.js`), ...styles, "icon.svg"].map(
  (name) => `assets/${name}`,
);

/**
 * Publishes the assets into siteDir/assets.
 * Scripts become classic ones, wrapped in a function, because a module does not load from a memory stick.
 */
export function publishAssets(sourceDir: string, siteDir: string): void {
  const target = join(siteDir, "assets");
  mkdirSync(target, { recursive: true });
  const minified = (name: string, loader: "ts" | "css") =>
    transformSync(readFileSync(join(sourceDir, name), "utf8"), {
      loader,
      minify: true,
      target: loader === "ts" ? "es2020" : ["chrome111", "firefox113", "safari16"],
      ...(loader === "ts" ? { format: "iife" as const } : {}),
      charset: "utf8",
    }).code;
  for (const name of scripts) writeFileSync(join(target, `${name}.js`), minified(`${name}.ts`, "ts"));
  for (const name of bundles)
    buildSync({
      entryPoints: [join(sourceDir, name, "index.ts")],
      outfile: join(target, `${name}.js`),
      bundle: true,
      minify: true,
      format: "iife",
      target: "es2022",
      charset: "utf8",
      legalComments: "none",
    });
  for (const name of styles) writeFileSync(join(target, name), minified(name, "css"));
  copyFileSync(join(sourceDir, "icon.svg"), join(target, "icon.svg"));
}
