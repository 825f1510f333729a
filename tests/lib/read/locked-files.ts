/** A file that may not be read: taking away its rights would not keep a superuser from reading it, so the fault is made here. */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import path from "node:path";
import { afterAll, beforeAll } from "vitest";

/** Files named locked.jpg cannot be read while this file's tests run. */
export function lockFiles(): void {
  const real = fs.readFileSync;
  const locked = (file: string, ...rest: unknown[]) => {
    if (path.basename(String(file)) === "locked.jpg") throw Object.assign(new Error("no right to read"), { code: "EACCES" });
    return Reflect.apply(real, undefined, [file, ...rest]);
  };
  const put = (readFileSync: unknown): void => {
    Object.assign(fs, { readFileSync });
    syncBuiltinESMExports();
  };
  beforeAll(() => put(locked));
  afterAll(() => put(real));
}
