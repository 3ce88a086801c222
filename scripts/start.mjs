// npm start: from a fresh clone to a condition report on the example house.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { install, oldNode } from "./lib/install.mjs";
import { openFile } from "./lib/open-file.mjs";
import { heading, root, run } from "./lib/run.mjs";

const example = "examples/terraced-house.json";
const report = "out/terraced-house.pdf";
const cli = "apps/cli/bin/goodgrounds.mjs";

async function step(title, args) {
  heading(title);
  const { code } = await run("node", args);
  return code === 0 ? undefined : `"${title}" failed (exit ${code}); its own message is above.`;
}

async function start() {
  const notReady = oldNode() ?? (await install());
  if (notReady) return notReady;
  mkdirSync(join(root, "out"), { recursive: true });
  return (
    (await step("build", ["apps/cli/build.mjs"])) ??
    (await step(`goodgrounds weigh ${example}`, [cli, "weigh", example])) ??
    (await step(`goodgrounds report ${example} --out ${report}`, [cli, "report", example, "--out", report]))
  );
}

const problem = await start();
if (problem) {
  console.error(`\n${problem}`);
  process.exitCode = 1;
} else {
  const file = join(root, report);
  console.log(`\nThe report is at ${file}`);
  if (openFile(file)) console.log("Opening it.");
}
