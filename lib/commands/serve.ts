/** Serves a site on this machine, and builds it again in a fresh process when a file changes, so that edits to the code count too. */
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import EleventyDevServer from "@11ty/eleventy-dev-server";
import { watch } from "chokidar";
import openBrowser from "open";
import { tell } from "./terminal.ts";

export type ServeOptions = { workspace: string; out: string; port: number; open: boolean };

const project = fileURLToPath(new URL("../../", import.meta.url));

/** Edits often come in a burst; this long without another, and the site is built. */
const quietMs = 300;

/** Builds, serves and watches until the process is stopped. */
export async function serve({ workspace, out, port, open }: ServeOptions): Promise<void> {
  await buildInFreshProcess(workspace, out);
  if (!existsSync(out)) {
    tell("There is no site to serve yet. Mend the problems above; the site is built when a file changes.");
  }
  const server = EleventyDevServer.getServer("ampwitness", out, {
    port,
    showAllHosts: false,
    domDiff: false,
    logger: { info: () => {}, error: tell, log: () => {} },
  });
  server.serve(port);
  await server.ready();
  const address = server.getServerUrl("localhost");
  tell(`The site is at ${address} (stop with Ctrl+C)`);
  if (open && process.stdout.isTTY === true && process.env.CI === undefined) await openBrowser(address).catch(() => undefined);

  const watched = [
    path.join(workspace, "data"),
    path.join(workspace, "content"),
    path.join(project, "lib"),
    path.join(project, "_site-config"),
  ];
  let timer: NodeJS.Timeout | undefined;
  let isBuilding = false;
  let isStale = false;
  const rebuild = async (): Promise<void> => {
    if (isBuilding) {
      isStale = true;
      return;
    }
    isBuilding = true;
    do {
      isStale = false;
      await buildInFreshProcess(workspace, out);
    } while (isStale);
    isBuilding = false;
    server.reload({ subtype: undefined, files: [], build: { templates: [] } });
  };
  watch(watched, { ignoreInitial: true }).on("all", (_, file) => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      tell(`${path.relative(process.cwd(), file)} changed`);
      void rebuild();
    }, quietMs);
  });
}

function buildInFreshProcess(workspace: string, out: string): Promise<number> {
  return new Promise((resolve) => {
    const start = path.join(project, "lib/start.js");
    const child = spawn(process.execPath, [start, "build", "--workspace", workspace, "--out", out], {
      cwd: project,
      stdio: "inherit",
    });
    child.on("exit", (code) => resolve(code ?? 1));
  });
}
