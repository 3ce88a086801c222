// Names, versions and licences of everything from others that is inside the built app.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";

const LICENCE_FILE = /^(?:licen[cs]e|copying|notice)(?:[._-].*)?$/i;

/** The folder of the package that a file belongs to, below a node_modules folder; undefined for a file of our own. */
export function packageOf(path) {
  return /^(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(path.replaceAll("\\", "/"))?.[1];
}

/** A package as it is named in the notices. Throws where it says of no licence that it may be passed on, or has no text of it. */
function noticeOf(folder, apache) {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const files = readdirSync(folder)
    .filter((file) => LICENCE_FILE.test(file))
    .sort();
  const texts = files.map((file) => readFileSync(join(folder, file), "utf8").trim());
  // One that is passed on under the same licence as this project needs no text of its own.
  if (texts.length === 0 && license === "Apache-2.0") texts.push(apache);
  if (texts.length === 0 || typeof license !== "string")
    throw new Error(
      `${folder}: found no text of its licence (${String(license)}), expected one to be passed on with the app.`,
    );
  return { name, version, license, text: [...new Set(texts)].join("\n\n") };
}

/** The notices of packages as one text, in the order of their names. Packages with the same text share it. */
export function notices(folders, root) {
  const apache = readFileSync(join(root, "LICENSE"), "utf8").trim();
  const all = [...new Set(folders)]
    .filter((folder) => existsSync(join(folder, "package.json")))
    .map((folder) => noticeOf(folder, apache))
    .sort((a, b) => (a.name < b.name ? -1 : a.name > b.name ? 1 : 0));
  const texts = new Map();
  for (const { name, version, license, text } of all)
    texts.set(text, [...(texts.get(text) ?? []), `${name} ${version} (${license})`]);
  const parts = [...texts].map(([text, names]) => `${[...new Set(names)].join("\n")}\n\n${text}`);
  const head =
    "Good Grounds is under the Apache License 2.0. Inside the app are these works of others, under their own licences.";
  return `${[head, ...parts].join(`\n\n${"-".repeat(80)}\n\n`)}\n`;
}
