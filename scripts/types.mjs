// npm run types: type-checks every package and app on its own, so that each sees only what its tsconfig allows
// (core: no Node, no DOM), and then the tests. npm run types -- packages/core checks one of them, or a few.
import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { root, run } from "./lib/run.mjs";
import { projectsAsked } from "./lib/type-projects.mjs";

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

/** tsc reports errors in what a project imports as well: each error is shown once, under the first that meets it. */
const shown = new Set();
function report({ project, code, seconds, output }) {
  console.log(`${code === 0 ? "ok    " : "FAILED"} ${project}${seconds ? `  ${seconds.toFixed(1)} s` : ""}`);
  // An error may go on over further lines, which are indented.
  const errors = output.split(/\n(?!\s)/).filter((error) => error.trim() !== "");
  const fresh = errors.filter((error) => !shown.has(error));
  for (const error of fresh) {
    shown.add(error);
    console.log(error.trimEnd());
  }
  if (fresh.length < errors.length) console.log(`(and ${errors.length - fresh.length} shown above)`);
}

const everything = projects();
const { projects: waiting, unknown } = projectsAsked(everything, process.argv.slice(2));
if (unknown.length > 0) {
  console.error(`No package, app or project: ${unknown.join(", ")}. There are: ${everything.join(", ")}.`);
  process.exit(2);
}
const results = [];
async function worker() {
  for (let project = waiting.shift(); project !== undefined; project = waiting.shift()) {
    const result = await check(project);
    results.push(result);
    report(result);
  }
}
await Promise.all(Array.from({ length: atOnce }, worker));

const failed = results.filter(({ code }) => code !== 0);
if (failed.length > 0) {
  console.error(`\nTypes: ${failed.length} of ${results.length} projects have errors.`);
  process.exitCode = 1;
}
