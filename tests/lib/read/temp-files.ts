import { mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import path from "node:path";

/** Files of a folder by their path from it; bytes where the text would not be UTF-8. */
export type Files = Readonly<Record<string, string | Uint8Array>>;

/** Writes files into a fresh folder, hands its path over, and takes the folder away again whatever happened. */
export async function withFiles<T>(files: Files, use: (root: string) => Promise<T>): Promise<T> {
  const root = await mkdtemp(path.join(tmpdir(), "ampwitness-"));
  try {
    for (const [name, content] of Object.entries(files)) {
      const file = path.join(root, name);
      await mkdir(path.dirname(file), { recursive: true });
      await writeFile(file, content);
    }
    return await use(root);
  } finally {
    await rm(root, { recursive: true, force: true });
  }
}
