import { readdir } from "node:fs/promises";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { check } from "../../../lib/commands/check.ts";
import { files, replaced, smallWorkspace } from "../check/small-workspace.ts";
import { type Files, withFiles } from "../read/temp-files.ts";

describe("the command check", () => {
  const written = { out: "", err: "" };
  beforeEach(() => {
    written.out = "";
    written.err = "";
    vi.spyOn(process.stdout, "write").mockImplementation((text) => {
      written.out += text;
      return true;
    });
    vi.spyOn(process.stderr, "write").mockImplementation((text) => {
      written.err += text;
      return true;
    });
  });
  afterEach(() => vi.restoreAllMocks());

  const checked = (workspace: Files): Promise<number> =>
    withFiles(workspace, async (root) => {
      const before = await readdir(root, { recursive: true });
      const status = await check({ workspace: root });
      expect(await readdir(root, { recursive: true })).toEqual(before);
      return status;
    });

  it("is content with a workspace in order, and writes nothing into it", async () => {
    expect(await checked(smallWorkspace)).toBe(0);
    expect(written.out).toBe("");
    expect(written.err).toMatch(/^checking tests: 1 of 1\n1 test read, 71 rows, 0 errors, 0 doubts, \d+\.\d s\n$/);
  });

  it("is content with doubts", async () => {
    expect(await checked(replaced(files.test, "target:\n  densityAt25C: 1.265\n", ""))).toBe(0);
    expect(written.out).toMatch(/^data\/tests\/mole-on-quarry\/test\.yaml:1:1: doubt target-missing: /);
  });

  it("fails on errors", async () => {
    expect(await checked(replaced(files.test, "quarry-44", "quary-44"))).toBe(1);
    expect(written.err).toContain("1 error, 0 doubts");
  });

  it("fails on a folder that is not there, without a stack of calls", async () => {
    expect(await check({ workspace: `${import.meta.dirname}/no-such-folder` })).toBe(1);
    expect(written.out).toMatch(/^data\/site\.yaml: error site-missing: /);
    expect(written.out + written.err).not.toMatch(/node:|Error:/);
  });
});
