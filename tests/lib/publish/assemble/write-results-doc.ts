/** Writes docs/results.md. */
import { writeFileSync } from "node:fs";
import { renderResultsDoc } from "./results-doc.ts";

writeFileSync(new URL("../../../../docs/results.md", import.meta.url), renderResultsDoc());
