import { createHash } from "node:crypto";
import { mkdir, stat, symlink, writeFile } from "node:fs/promises";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { formatProblem } from "../../../lib/nouns/problem.ts";
import { listWorkspace, readText, sha256OfFile } from "../../../lib/read/workspace-files.ts";
import { lockFiles } from "./locked-files.ts";
import { withFiles } from "./temp-files.ts";

lockFiles();

describe("files of a workspace", () => {
  it("are listed by path, with size and digest, from data/ and content/ alone", () =>
    withFiles(
      { "data/b.yaml": "b", "data/a/c.csv": "c", "content/x.md": "", "README.md": "no input", "_site/index.html": "" },
      async (root) => {
        const { files, problems } = await listWorkspace(root);
        expect(problems).toEqual([]);
        expect(files.map((file) => [file.path, file.bytes])).toEqual([
          ["content/x.md", 0],
          ["data/a/c.csv", 1],
          ["data/b.yaml", 1],
        ]);
        // SHA-256 of no bytes: FIPS 180-4's own example value.
        expect(files[0]?.sha256).toBe("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
      },
    ));

  it("leave out hidden files and what desktops strew about", () =>
    withFiles(
      { "data/.DS_Store": "", "data/.hidden/a.yaml": "", "data/Thumbs.db": "", "data/desktop.ini": "", "data/a.yaml": "" },
      async (root) => {
        const { files, problems } = await listWorkspace(root);
        expect(files.map((file) => file.path)).toEqual(["data/a.yaml"]);
        expect(problems).toEqual([]);
      },
    ));

  it("may not be links: to a file, to a folder outside, to themselves, or to nothing", () =>
    withFiles({ "data/a.yaml": "", "outside/secret.txt": "" }, async (root) => {
      await symlink("a.yaml", path.join(root, "data/1-file.yaml"));
      await symlink("../outside", path.join(root, "data/2-folder"));
      await symlink(".", path.join(root, "data/3-round"));
      await symlink("nowhere", path.join(root, "data/4-dangling"));
      const { files, problems } = await listWorkspace(root);
      expect(files.map((file) => file.path)).toEqual(["data/a.yaml"]);
      expect(problems.map(formatProblem)).toEqual(
        ["data/1-file.yaml", "data/2-folder", "data/3-round", "data/4-dangling"].map(
          (file) =>
            `${file}: error link-in-workspace: expected a file or folder that stands in the workspace itself, found a symbolic link\n  mend: copy the file here in place of the link, so that the published evidence is the file you mean`,
        ),
      );
    }));

  it("may stand in a workspace that is itself reached by a link", () =>
    withFiles({ "real/data/a.yaml": "" }, async (root) => {
      await symlink("real", path.join(root, "linked"));
      expect((await listWorkspace(path.join(root, "linked"))).files.map((file) => file.path)).toEqual(["data/a.yaml"]);
    }));

  it("are told where they cannot be read, and the rest is listed", () =>
    withFiles({ "data/locked.jpg": "", "data/open.yaml": "" }, async (root) => {
      const { files, problems } = await listWorkspace(root);
      expect(files.map((file) => file.path)).toEqual(["data/open.yaml"]);
      expect(problems.map(formatProblem)).toEqual([
        "data/locked.jpg: error file-unreadable: expected a file that can be read, found EACCES\n  mend: check that the file is there and that you may read it",
      ]);
    }));

  it("are none where the workspace is not there", async () => {
    expect(await listWorkspace(path.join(import.meta.dirname, "no-such-folder"))).toEqual({ files: [], problems: [] });
  });

  it("are never written to: their times stay", () =>
    withFiles({ "data/a.yaml": "a" }, async (root) => {
      const before = await stat(path.join(root, "data/a.yaml"));
      await listWorkspace(root);
      const after = await stat(path.join(root, "data/a.yaml"));
      expect(after.mtimeMs).toBe(before.mtimeMs);
    }));
});

describe("digests and texts", () => {
  it("digest a file longer than one piece of a stream", () =>
    withFiles({ "big.bin": new Uint8Array(300_000).fill(7) }, async (root) => {
      const expected = createHash("sha256").update(new Uint8Array(300_000).fill(7)).digest("hex");
      expect(await sha256OfFile(path.join(root, "big.bin"))).toBe(expected);
    }));

  it("read UTF-8 without its mark, and nothing else", () =>
    withFiles({}, async (root) => {
      await mkdir(path.join(root, "data"));
      await writeFile(path.join(root, "data/marked.csv"), "\uFEFFaę");
      await writeFile(path.join(root, "data/single.csv"), Uint8Array.of(0x61, 0xea));
      const { files } = await listWorkspace(root);
      const [marked, single] = files;
      expect(marked && (await readText(marked))).toBe("aę");
      expect(single && (await readText(single))).toBeUndefined();
    }));
});
