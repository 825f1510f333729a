/** Writes the corpus's lists into docs/dialects.md. */
import { readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { withCorpusLists } from "./corpus-doc.ts";

const file = fileURLToPath(new URL("../../docs/dialects.md", import.meta.url));
writeFileSync(file, withCorpusLists(readFileSync(file, "utf8")));
