import { defineConfig } from "vitest/config";

/** The kinds of test, each of which can be run alone: npx vitest --config tests/vitest.config.ts --project lib. */
export default defineConfig({
  test: {
    projects: [
      { test: { name: "lib", include: ["tests/lib/**/*.test.ts", "tests/lib/**/*.test.tsx"], root: "." } },
      { test: { name: "reference", include: ["tests/reference/**/*.test.ts"], root: "." } },
      { test: { name: "generator", include: ["tests/generator/**/*.test.ts"], root: ".", hookTimeout: 120_000, testTimeout: 60_000 } },
      { test: { name: "proving", include: ["tests/proving/**/*.test.ts"], root: ".", hookTimeout: 120_000, testTimeout: 60_000 } },
      {
        test: {
          name: "models",
          include: ["tests/campaigns/**/*.test.ts", "tests/forecast/**/*.test.ts", "tests/dialects/**/*.test.ts"],
          root: ".",
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
      { test: { name: "sites", include: ["tests/sites/**/*.test.ts"], root: ".", testTimeout: 120_000, hookTimeout: 120_000 } },
      { test: { name: "pages", include: ["tests/pages/**/*.test.ts"], root: ".", testTimeout: 180_000, hookTimeout: 180_000 } },
    ],
  },
});
