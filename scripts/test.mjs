// npm test: everything that must hold, quickest first, stopping at the first failure.
import { mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { install, oldNode, tooOldForTests } from "./lib/install.mjs";
import { describeMissing, outsideTools, outsideToolsEnv } from "./lib/outside-tools.mjs";
import { heading, root, run } from "./lib/run.mjs";
import { counts } from "./lib/vitest-result.mjs";

const inCi = process.env.CI === "true" || process.env.CI === "1";
const resultFile = "out/vitest.json";

const checks = [
  { title: "lint (biome)", command: "biome", args: ["check", "--error-on-warnings", "."] },
  { title: "texts of topics", command: "node", args: ["scripts/format-topics.ts", "--check"] },
  { title: "types (tsc)", command: "node", args: ["scripts/types.mjs"] },
  {
    title: "the checks themselves",
    command: "node",
    args: ["--test", "--test-reporter=dot", "scripts/boundaries.test.mjs", "scripts/helpers.test.mjs"],
  },
  { title: "boundaries", command: "node", args: ["scripts/boundaries.mjs"] },
  { title: "licences", command: "node", args: ["scripts/licences.mjs"] },
  { title: "unused code and dependencies (knip)", command: "knip", args: ["--no-config-hints"] },
  { title: "build", command: "node", args: ["apps/cli/build.mjs"] },
];

/** Runs everything. Returns what went wrong, if anything, and how many tests passed and failed. */
async function test() {
  // A check that stops us before the tests have run counts as the one failure.
  const stopped = (problem) => ({ problem, passed: 0, failed: 1, skipped: 0, missing: [] });

  const notReady = oldNode() ?? (await install()) ?? (await tooOldForTests());
  if (notReady) return stopped(notReady);

  const tools = await outsideTools();
  if (tools.missing.length > 0) {
    heading("outside tools");
    console.error(describeMissing(tools.missing));
    if (inCi) return stopped("In CI every outside tool must be there: nothing may be skipped.");
  }

  for (const { title, command, args } of checks) {
    heading(title);
    const { code } = await run(command, args);
    if (code !== 0) return stopped(`Stopped at "${title}" (exit ${code}): the tests did not run.`);
  }

  heading("tests (vitest)");
  mkdirSync(join(root, "out"), { recursive: true });
  // A result left over from an earlier run must not be mistaken for this one's.
  rmSync(join(root, resultFile), { force: true });
  const reporters = ["--reporter=default", "--reporter=json", `--outputFile.json=${resultFile}`];
  const { code } = await run("vitest", ["run", ...reporters], { env: outsideToolsEnv(tools) });
  const result = counts(readResult(), code);
  return { ...result, missing: tools.missing, problem: code === 0 ? undefined : `vitest failed (exit ${code}).` };
}

function readResult() {
  try {
    return JSON.parse(readFileSync(join(root, resultFile), "utf8"));
  } catch {
    return undefined;
  }
}

const { problem, passed, failed, skipped, missing } = await test();
if (problem) console.error(`\n${problem}`);
if (!problem && missing.length > 0) {
  heading("NOT EVERYTHING WAS CHECKED");
  console.error(`Tests that need these were skipped.\n${describeMissing(missing)}`);
}
if (skipped > 0) console.log(`\n${skipped} skipped`);
console.log(`\n${passed} passed, ${failed} failed`);
process.exitCode = problem ? 1 : 0;
