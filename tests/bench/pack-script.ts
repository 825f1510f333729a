/** Packs a script of the bench, as lib/start.js packs the command line: what is timed is what users run. */
import path from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";

const bench = fileURLToPath(new URL("./", import.meta.url));

/**
 * @param script  from the bench's folder
 * @param folder  where the packed script is put
 * @returns its path
 */
export async function packScript(script: string, folder: string): Promise<string> {
  const packed = path.join(folder, `${path.basename(script, ".ts")}.mjs`);
  await build({
    entryPoints: [path.join(bench, script)],
    outfile: packed,
    bundle: true,
    platform: "node",
    format: "esm",
    target: "node20",
    logLevel: "warning",
    banner: { js: 'import { createRequire } from "node:module"; const require = createRequire(import.meta.url);' },
  });
  return packed;
}
