// npm run types: type-checks every package and app on its own, so that each sees only what its tsconfig allows
// (core: no Node, no DOM), and then the tests.
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { root, run } from "./lib/run.mjs";

// tsc is itself parallel: more at once gains nothing and costs memory.
const atOnce = 2;

function projects() {
  const folders = ["packages", "apps"].flatMap((group) => {
    const path = join(root, group);
    if (!existsSync(path)) return [];
    return readdirSync(path)
      .filter((name) => existsSync(join(path, name, "package.json")))
      .map((name) => `${group}/${name}/tsconfig.json`);
  });
  return [...folders, "tsconfig.tests.json"];
}

async function check(project) {
  // A package without a tsconfig would otherwise be passed over in silence.
  if (!existsSync(join(root, project))) return { project, code: 1, output: `${project} is missing.\n` };
  const started = performance.now();
  const result = await run("tsc", ["--noEmit", "--pretty", "false", "-p", project], { capture: true });
  return { project, seconds: (performance.now() - started) / 1000, ...result };
}

const waiting = projects();
const results = [];
async function worker() {
  for (let project = waiting.shift(); project !== undefined; project = waiting.shift()) {
    const result = await check(project);
    results.push(result);
    console.log(`${result.code === 0 ? "ok    " : "FAILED"} ${project}${result.seconds ? ` ${result.seconds.toFixed(1)} s` : ""}`);
    if (result.output) console.log(result.output.trimEnd());
  }
}
await Promise.all(Array.from({ length: atOnce }, worker));

const failed = results.filter(({ code }) => code !== 0);
if (failed.length > 0) {
  console.error(`\nTypes: ${failed.length} of ${results.length} projects have errors.`);
  process.exitCode = 1;
}
