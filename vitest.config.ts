import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vitest/config";
import { TEST_LIMIT, WAIT_LIMIT } from "./outside/patience.ts";
import { timesAsMany } from "./outside/seed.ts";

const manyCases = fileURLToPath(new URL("outside/many-cases.ts", import.meta.url));

/** Where many more random examples are asked for, tests get them instead of those they ask for themselves. */
const withManyCases: Plugin = {
  name: "many-cases",
  enforce: "pre",
  resolveId: (source, importer) => (source === "fast-check" && importer !== manyCases ? manyCases : undefined),
};

export default defineConfig({
  plugins: timesAsMany() === 1 ? [] : [withManyCases],
  test: {
    include: [
      "packages/*/src/**/*.test.ts",
      "apps/*/src/**/*.test.ts",
      "outside/**/*.test.ts",
      "bench/**/*.test.ts",
      "examples/**/*.test.ts",
    ],
    setupFiles: ["outside/fixed-seed.ts"],
    pool: "threads",
    isolate: false,
    maxWorkers: 2,
    testTimeout: TEST_LIMIT * timesAsMany(),
    hookTimeout: TEST_LIMIT,
    // What is waited for may take its time on a busy machine.
    expect: { poll: { timeout: WAIT_LIMIT } },
  },
});
