/** Styles and scripts: written as CSS and TypeScript under _site-config/assets, published small and plain. */
import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { transformSync } from "esbuild";

const scripts = ["sort", "search"];

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
  writeFileSync(join(target, "site.css"), minified("site.css", "css"));
  copyFileSync(join(sourceDir, "icon.svg"), join(target, "icon.svg"));
}
