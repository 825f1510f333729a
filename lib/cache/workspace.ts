/** Reads a workspace with what an earlier run remembered of it, and remembers what the next one can use. */
import { realpathSync } from "node:fs";
import type { Problem } from "../nouns/problem.ts";
import { readWorkspace, type Workspace } from "../read/workspace.ts";
import { type RememberedWorkspace, workspaceMemory } from "../read/workspace-memory.ts";
import { digestOf } from "./digest.ts";
import type { Entries } from "./entries.ts";

/**
 * @param code  the version of the code: another may read the same records in another way
 */
export async function recallWorkspace(root: string, entries: Entries, code: string): Promise<{ value: Workspace; problems: Problem[] }> {
  const key = digestOf([code, realPath(root)]);
  const memory = workspaceMemory(entries.get<RememberedWorkspace>("workspaces", key), Date.now());
  const read = await readWorkspace(root, memory);
  entries.put("workspaces", key, memory.kept());
  return read;
}

function realPath(root: string): string {
  try {
    return realpathSync(root);
  } catch {
    return root;
  }
}
