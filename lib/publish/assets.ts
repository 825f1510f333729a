/** Styles and scripts: written as CSS and TypeScript under _site-config/assets, published small and plain. */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type BuildOptions, buildSync, transformSync } from "esbuild";
import type { Language } from "../nouns/site.ts";

/** The first is every page's, the second is for pages that leave the site; the others add what one page alone needs. */
const styles = ["site.css", "card.css", "find.css", "side-by-side.css"];

/** Scripts by the file that they start from. Only the page that needs one fetches it, the log explorer's when asked for. */
const scripts = {
  sort: "sort.ts",
  search: "search.ts",
  compare: "compare.ts",
  "explore-button": "explore-button.ts",
  explore: "explore/index.ts",
  find: "find/index.ts",
  "side-by-side": "side-by-side/index.ts",
} as const;

type ScriptName = keyof typeof scripts;
const scriptNames = Object.keys(scripts) as ScriptName[];

/** Apart from the others in two ways: it finds its words in the page, so one file serves every language, and it is written in JSX. */
const sideBySide: ScriptName = "side-by-side";
/** JSX as calls of h, which a file brings in: a hundred bytes less after gzip than with the automatic runtime. */
const elementsBy = (path: string): BuildOptions => ({
  inject: [path],
  tsconfigRaw: { compilerOptions: { jsx: "react", jsxFactory: "h", jsxFragmentFactory: "Fragment" } },
});

/** Where a script stands: one file a language, each with the words of that language only. */
export const scriptPath = (name: ScriptName, language: Language): string =>
  language === "en" || name === sideBySide ? `assets/${name}.js` : `assets/${name}.${language}.js`;

/** The languages that a script is built in. */
const builtIn = (name: ScriptName, languages: readonly Language[]): readonly Language[] => (name === sideBySide ? ["en"] : languages);

/** All that is published, by its path from the site's root. */
export const assetPaths = (languages: readonly Language[]): string[] => [
  ...scriptNames.flatMap((name) => builtIn(name, languages).map((language) => scriptPath(name, language))),
  ...[...styles, "icon.svg"].map((name) => `assets/${name}`),
];

/**
 * Publishes the assets into siteDir/assets.
 * Scripts become classic ones, wrapped in a function, because a module does not load from a memory stick.
 */
export function publishAssets(sourceDir: string, siteDir: string, languages: readonly Language[]): void {
  const target = join(siteDir, "assets");
  mkdirSync(target, { recursive: true });
  for (const name of scriptNames)
    for (const language of builtIn(name, languages))
      buildSync({
        entryPoints: [join(sourceDir, scripts[name])],
        outfile: join(siteDir, scriptPath(name, language)),
        bundle: true,
        minify: true,
        format: "iife",
        target: "es2022",
        charset: "utf8",
        legalComments: "none",
        ...(name === sideBySide ? elementsBy(join(sourceDir, "element.ts")) : {}),
        // Decides at build time which table of words a script holds; the others fall away (_site-config/assets/language.ts).
        define: { PAGE_LANGUAGE: JSON.stringify(language) },
      });
  for (const name of styles) {
    const { code } = transformSync(readFileSync(join(sourceDir, name), "utf8"), {
      loader: "css",
      minify: true,
      target: ["chrome111", "firefox113", "safari16"],
      charset: "utf8",
    });
    writeFileSync(join(target, name), code);
  }
  copyFileSync(join(sourceDir, "icon.svg"), join(target, "icon.svg"));
}
