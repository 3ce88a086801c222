import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: [
      "packages/*/src/**/*.test.ts",
      "apps/*/src/**/*.test.ts",
      "checks/**/*.test.ts",
      "bench/**/*.test.ts",
      "examples/**/*.test.ts",
    ],
    pool: "threads",
    isolate: false,
    maxWorkers: 2,
    testTimeout: 60_000,
    // A browser starts slowly on a machine that has never started one, or that is busy.
    hookTimeout: 60_000,
  },
});
