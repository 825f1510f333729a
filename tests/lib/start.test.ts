import { spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, describe, expect, it } from "vitest";

const repository = fileURLToPath(new URL("../../", import.meta.url));
const folders: string[] = [];
afterAll(() => {
  for (const folder of folders) rmSync(folder, { recursive: true, force: true });
});

/** A project of a few lines that is laid out as ours is, and starts as ours does. */
function smallProject(): string {
  const project = mkdtempSync(join(tmpdir(), "ampwitness-start-"));
  folders.push(project);
  mkdirSync(join(project, "lib/run"), { recursive: true });
  mkdirSync(join(project, "_site-config/pages"), { recursive: true });
  for (const file of ["lib/start.js", "package.json", "package-lock.json", "tsconfig.json"])
    cpSync(join(repository, file), join(project, file));
  symlinkSync(join(repository, "node_modules"), join(project, "node_modules"));
  writeFileSync(join(project, "lib/run/worker.ts"), "export {};\n");
  writeFileSync(join(project, "lib/beside.txt"), "beside the source");
  say(project, "one");
  return project;
}

/** The command line says a word, and reads a file that lies beside its source. */
function say(project: string, word: string): void {
  writeFileSync(
    join(project, "lib/cli.ts"),
    `import { readFileSync } from "node:fs";
const word: string = ${JSON.stringify(word)};
const beside = readFileSync(new URL("./beside.txt", import.meta.url), "utf8");
process.stdout.write(\`\${word} \${process.argv[2]} \${beside}\`);
`,
  );
}

function start(project: string): { said: string; complained: string } {
  const { stdout, stderr } = spawnSync(process.execPath, [join(project, "lib/start.js"), "check"], { encoding: "utf8", cwd: tmpdir() });
  return { said: stdout, complained: stderr };
}

describe("starting", () => {
  it("packs the sources once, and again where one has changed", () => {
    const project = smallProject();
    expect(start(project)).toEqual({ said: "one check beside the source", complained: "" });
    const packs = readdirSync(join(project, ".packed"));
    expect(packs).toHaveLength(1);
    start(project);
    expect(readdirSync(join(project, ".packed"))).toEqual(packs);
    say(project, "two");
    expect(start(project)).toEqual({ said: "two check beside the source", complained: "" });
    expect(readdirSync(join(project, ".packed"))).toHaveLength(2);
  });

  it("starts from the sources where packs cannot be kept, and says so", () => {
    const project = smallProject();
    // A file where the folder should be, since whoever runs tests may write anywhere.
    writeFileSync(join(project, ".packed"), "");
    const { said, complained } = start(project);
    expect(said).toBe("one check beside the source");
    expect(complained).toMatch(/^Starting slowly, since code cannot be packed into \.packed\/: /);
  });

  it("names the fault of a source that is not TypeScript", () => {
    const project = smallProject();
    writeFileSync(join(project, "lib/cli.ts"), "const word: = 1;\n");
    expect(start(project).complained).toContain("cli.ts:1");
  });
});
