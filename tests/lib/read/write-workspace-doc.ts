/** Makes the tables of docs/workspace.md anew: npx tsx tests/lib/read/write-workspace-doc.ts */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { withTables } from "./workspace-doc.ts";

const page = fileURLToPath(new URL("../../../docs/workspace.md", import.meta.url));
writeFileSync(page, withTables(readFileSync(page, "utf8")));
