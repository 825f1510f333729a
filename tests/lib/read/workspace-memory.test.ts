import { appendFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { readWorkspace } from "../../../lib/read/workspace.ts";
import { workspaceMemory } from "../../../lib/read/workspace-memory.ts";
import { smallWorkspace } from "../check/small-workspace.ts";
import { withFiles } from "./temp-files.ts";

const charger = "data/chargers/mole-six.yaml";
/** Long after the files were written. */
const laterMs = (): number => Date.now() + 60_000;

describe("what a run remembers of a workspace", () => {
  it("gives the next run the same records with their places, and is asked for each of them", async () => {
    await withFiles(smallWorkspace, async (root) => {
      const first = workspaceMemory(undefined, laterMs());
      const before = await readWorkspace(root, first);
      const second = workspaceMemory(first.kept(), laterMs());
      const after = await readWorkspace(root, second);
      expect(after.value.chargers.get("mole-six")?.value).toEqual(before.value.chargers.get("mole-six")?.value);
      expect(after.value.chargers.get("mole-six")?.placeOf(["name"])).toEqual(before.value.chargers.get("mole-six")?.placeOf(["name"]));
      expect([...second.kept().records.keys()]).toEqual([...first.kept().records.keys()]);
      expect(first.kept().digests.get(charger)).toEqual(second.kept().digests.get(charger));
    });
  });

  it("is no digest of a file written just before the run, whose next change its stamp may not tell", async () => {
    await withFiles(smallWorkspace, async (root) => {
      const memory = workspaceMemory(undefined, Date.now());
      await readWorkspace(root, memory);
      expect(memory.kept().digests.size).toBe(0);
    });
  });

  it("is no record of a file that was written between its digest and its reading: the old digest would name the new words", async () => {
    await withFiles(smallWorkspace, async (root) => {
      const memory = workspaceMemory(undefined, laterMs());
      await readWorkspace(root, {
        ...memory,
        noteDigest(file, ...rest) {
          memory.noteDigest(file, ...rest);
          if (file === charger) appendFileSync(path.join(root, charger), "\n# written meanwhile\n");
        },
      });
      expect(memory.kept().records.has(charger)).toBe(false);
      expect(memory.kept().records.has("data/batteries/quarry-44.yaml")).toBe(true);
    });
  });
});
