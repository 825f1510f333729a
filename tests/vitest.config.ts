import { availableParallelism } from "node:os";
import { defineConfig } from "vitest/config";

/**
 * A test that takes longer hangs; none is there to say how fast anything is, and some machines are slow.
 *
 * Files share a process: a fresh one for each would load our modules three hundred times, which takes longer than the tests do. So a test
 * leaves behind what it found: spies are taken back, folders removed, and no module holds what another file could notice.
 */
const common = { root: ".", isolate: false, testTimeout: 60_000, hookTimeout: 120_000 };
const withWholeSites = { ...common, testTimeout: 180_000, hookTimeout: 180_000 };

/** The kinds of test, each of which can be run alone: npx vitest --config tests/vitest.config.ts --project lib. */
export default defineConfig({
  test: {
    // One for each processor: tests that start processes of their own mostly wait for them.
    maxWorkers: availableParallelism(),
    projects: [
      { test: { name: "lib", include: ["tests/lib/**/*.test.ts", "tests/lib/**/*.test.tsx"], ...common } },
      { test: { name: "reference", include: ["tests/reference/**/*.test.ts"], ...common } },
      { test: { name: "generator", include: ["tests/generator/**/*.test.ts"], ...common } },
      { test: { name: "proving", include: ["tests/proving/**/*.test.ts"], ...common } },
      {
        test: {
          name: "models",
          include: ["tests/campaigns/**/*.test.ts", "tests/forecast/**/*.test.ts", "tests/dialects/**/*.test.ts"],
          ...common,
        },
      },
      { test: { name: "sites", include: ["tests/sites/**/*.test.ts"], ...withWholeSites } },
      { test: { name: "pages", include: ["tests/pages/**/*.test.ts"], ...withWholeSites } },
    ],
  },
});
