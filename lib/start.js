/**
 * Starts the command line.
 *
 * Node reads no TypeScript by itself, and to have it taught file by file costs seconds at every start. So our sources are packed once into
 * a few files of JavaScript, in .packed/ beside package.json, and packed anew when one of them has changed. The folder may be deleted at any
 * time. Where it cannot be written, Node is taught after all.
 */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, utimesSync } from "node:fs";
import { join, sep } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const project = fileURLToPath(new URL("../", import.meta.url));
const packs = join(project, ".packed");
/** A pack that no start has used for a day is taken away. */
const keptMs = 24 * 3600 * 1000;

/** Our own files below a folder that are code. */
const sourcesIn = (folder) =>
  readdirSync(join(project, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && /\.(?:ts|tsx|js)$/.test(entry.name))
    .map((entry) => join(entry.parentPath, entry.name));

/** What starts by itself, and not by way of another file: the command line, a thread, and the page templates, which Eleventy looks for. */
const templates = readdirSync(join(project, "_site-config/pages")).map((name) => `_site-config/pages/${name}`);
const entryPoints = ["lib/cli.ts", "lib/run/worker.ts", ...templates];

/** Names the sources as they stand: by path, size and times, the last of which no program can set back. */
function nameOfSources() {
  const hash = createHash("sha256").update(`${project} ${process.version}`);
  const others = ["package-lock.json", "tsconfig.json"].map((name) => join(project, name));
  for (const file of [...sourcesIn("lib"), ...sourcesIn("_site-config"), ...others].sort()) {
    const { ino, size, mtimeNs, ctimeNs } = statSync(file, { bigint: true });
    hash.update(`\n${file} ${ino} ${size} ${mtimeNs} ${ctimeNs}`);
  }
  return hash.digest("hex").slice(0, 32);
}

/** Packs the sources into a folder, which appears whole or not at all. */
async function packInto(folder) {
  const { build } = await import("esbuild");
  const making = `${folder}-${process.pid}`;
  mkdirSync(making, { recursive: true });
  try {
    await build({
      absWorkingDir: project,
      entryPoints,
      outbase: project,
      outdir: making,
      bundle: true,
      splitting: true,
      packages: "external",
      platform: "node",
      format: "esm",
      target: `node${process.versions.node}`,
      define: { packedFolder: JSON.stringify(folder + sep) },
      plugins: [whereSourcesStand],
      logLevel: "error",
    });
    renameSync(making, folder);
  } catch (error) {
    rmSync(making, { recursive: true, force: true });
    // Another process may have packed the same sources meanwhile.
    if (!existsSync(folder)) throw error;
  }
}

/** Code that looks for files beside itself looks beside its source. */
const whereSourcesStand = {
  name: "where sources stand",
  setup({ onLoad }) {
    onLoad({ filter: /\.tsx?$/ }, ({ path }) => {
      const text = readFileSync(path, "utf8");
      if (path.includes(`${sep}node_modules${sep}`) || !text.includes("import.meta.url")) return undefined;
      const loader = path.endsWith("x") ? "tsx" : "ts";
      return { contents: text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(path).href)), loader };
    });
  },
};

function forgetOldPacks() {
  for (const name of readdirSync(packs)) {
    const pack = join(packs, name);
    if (Date.now() - statSync(pack).mtimeMs > keptMs) rmSync(pack, { recursive: true, force: true });
  }
}

/** The command line's file, packed. */
async function packedCommands() {
  const folder = join(packs, nameOfSources());
  if (!existsSync(folder)) {
    await packInto(folder);
    forgetOldPacks();
  }
  const now = new Date();
  utimesSync(folder, now, now);
  return pathToFileURL(join(folder, "lib/cli.js")).href;
}

/** The command line's own source, once Node has been taught to read it. */
async function taughtCommands(error) {
  process.stderr.write(`Starting slowly, since code cannot be packed into .packed/: ${error instanceof Error ? error.message : error}\n`);
  const { register } = await import("tsx/esm/api");
  register({ tsconfig: join(project, "tsconfig.json") });
  return new URL("./cli.ts", import.meta.url).href;
}

await import(await packedCommands().catch(taughtCommands));
