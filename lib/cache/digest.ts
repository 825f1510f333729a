/** Digests of plain data. */
import { createHash } from "node:crypto";

/** SHA-256, in hexadecimal, of plain data written as JSON; fields count in the order in which they stand. */
export function digestOf(value: unknown): string {
  return createHash("sha256")
    .update(JSON.stringify(value) ?? "nothing")
    .digest("hex");
}
