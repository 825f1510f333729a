/** Writes docs/reference-checks.md: npx tsx tests/reference/write-coverage.ts */
import { writeFileSync } from "node:fs";
import { findCoverage, renderCoverage } from "./coverage.ts";

writeFileSync(new URL("../../docs/reference-checks.md", import.meta.url), renderCoverage(findCoverage()));
