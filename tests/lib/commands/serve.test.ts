import { type ChildProcess, spawn } from "node:child_process";
import { writeFile } from "node:fs/promises";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { smallWorkspace } from "../check/small-workspace.ts";
import { withFiles } from "../read/temp-files.ts";

const start = fileURLToPath(new URL("../../../lib/start.js", import.meta.url));

/** What a process has said so far, and a way to wait for more. */
function listening(child: ChildProcess): (wanted: RegExp) => Promise<RegExpExecArray> {
  let told = "";
  let notice = (): void => undefined;
  for (const stream of [child.stdout, child.stderr])
    stream?.on("data", (text) => {
      told += String(text);
      notice();
    });
  return (wanted) =>
    new Promise((resolve, reject) => {
      notice = () => {
        const found = wanted.exec(told);
        if (found !== null) resolve(found);
      };
      child.once("exit", () => reject(new Error(told)));
      notice();
    });
}

describe("serving", () => {
  it("tells an address at which the site stands, and builds again when words change", () =>
    withFiles(smallWorkspace, async (workspace) => {
      const child = spawn(process.execPath, [start, "serve", "--workspace", workspace, "--port", "8461", "--no-open"], {
        stdio: ["ignore", "pipe", "pipe"],
      });
      try {
        const told = listening(child);
        const [, address = ""] = await told(/The site is at (\S+) /);
        const title = async (): Promise<string> => /<title>([^<]*)/.exec(await (await fetch(address)).text())?.[1] ?? "none";
        expect(await title()).toContain("Workshop by the weir");
        const site = String(smallWorkspace["data/site.yaml"]);
        await writeFile(path.join(workspace, "data/site.yaml"), site.replace(/^title: .*$/m, "title: Another name"));
        await told(/site\.yaml changed[\s\S]*\d page/);
        expect(await title()).toContain("Another name");
      } finally {
        child.kill();
      }
    }));
});
