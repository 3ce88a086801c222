// npm start: from a fresh clone to a condition report on the example house, and then the field app on this machine.
// The app is served only where somebody sits at a terminal (or with --serve), so that an unattended run ends by itself.
import { mkdirSync } from "node:fs";
import { join } from "node:path";
import { install, oldNode } from "./lib/install.mjs";
import { openFile } from "./lib/open-file.mjs";
import { heading, root, run } from "./lib/run.mjs";
import { shouldServe } from "./lib/should-serve.mjs";
import { serve } from "./lib/static-server.mjs";

const example = "examples/terraced-house.json";
const report = "out/terraced-house.pdf";
const cli = "apps/cli/bin/goodgrounds.mjs";
const app = "apps/field/dist";
/** What the browser keeps belongs to the address, so it is the same at every start where it can be. */
const port = 8417;

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
    (await step(`goodgrounds report ${example} --out ${report}`, [cli, "report", example, "--out", report])) ??
    (await step("build the field app", ["apps/field/build.mjs"]))
  );
}

async function serveApp() {
  const { address } = await serve(join(root, app), { port, tries: 20 });
  console.log(`\nThe field app is at ${address}  (Ctrl+C ends it)`);
  if (new URL(address).port !== String(port))
    console.log(
      `Port ${port} is taken. Jobs kept under another address are not lost, but not to be seen under this one.`,
    );
  if (openFile(address)) console.log("Opening it.");
}

const problem = await start();
if (problem) {
  console.error(`\n${problem}`);
  process.exitCode = 1;
} else {
  const file = join(root, report);
  console.log(`\nThe report is at ${file}`);
  if (openFile(file)) console.log("Opening it.");
  if (shouldServe()) await serveApp();
  else console.log(`The field app is in ${app}; any static host serves it. Here: npm start -- --serve`);
}
