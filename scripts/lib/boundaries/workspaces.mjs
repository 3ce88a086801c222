import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const notSources = new Set(["node_modules", "dist", "out", "coverage"]);

/** Every package and app under `root`: `{ group, folder, path, name, exports, files }`, paths with forward slashes. */
export function workspacesOf(root) {
  return ["packages", "apps"].flatMap((group) => {
    if (!existsSync(join(root, group))) return [];
    return readdirSync(join(root, group))
      .filter((folder) => existsSync(join(root, group, folder, "package.json")))
      .sort()
      .map((folder) => {
        const path = `${group}/${folder}`;
        const manifest = JSON.parse(readFileSync(join(root, path, "package.json"), "utf8"));
        return { group, folder, path, name: manifest.name, exports: manifest.exports, files: sourcesIn(root, path) };
      });
  });
}

function sourcesIn(root, path) {
  return readdirSync(join(root, path), { withFileTypes: true }).flatMap((entry) => {
    if (entry.isDirectory()) return notSources.has(entry.name) ? [] : sourcesIn(root, `${path}/${entry.name}`);
    return /\.[mc]?tsx?$/.test(entry.name) ? [`${path}/${entry.name}`] : [];
  });
}

/** Whether the package declares this subpath ("." or "./something") in the exports of its package.json. */
export function exportsSubpath({ exports }, subpath) {
  if (exports === undefined) return false;
  const declared = typeof exports === "object" && exports !== null ? Object.keys(exports) : [];
  // Without keys that start with a dot, the whole value is about ".".
  if (!declared.some((key) => key.startsWith("."))) return subpath === ".";
  return declared.some((key) => {
    const [before, after] = key.split("*");
    if (after === undefined) return key === subpath;
    return subpath.startsWith(before) && subpath.endsWith(after) && subpath.length > before.length + after.length;
  });
}
