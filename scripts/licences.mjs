// npm run licences: everything that is shipped with Good Grounds must carry a permissive licence.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "./lib/run.mjs";
import { shipped } from "./lib/shipped.mjs";
import { satisfies } from "./lib/spdx.mjs";

const permissive = new Set([
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "Unlicense",
  "Zlib",
  "BlueOak-1.0.0",
  "CC0-1.0",
]);
const fontsOnly = "OFL-1.1";

/** The lockfile leaves the licence out for some packages; an installed package says it itself. */
function licenceOf({ path, license }) {
  if (license) return license;
  const manifest = join(root, path, "package.json");
  if (!existsSync(manifest)) return "not stated (and not installed here)";
  const installed = JSON.parse(readFileSync(manifest, "utf8"));
  // Old packages have { type } or a list of them: a choice.
  const stated = [installed.license ?? installed.licenses ?? []].flat().map((one) => one.type ?? one);
  return stated.join(" OR ") || "not stated";
}

function holdsFonts(path) {
  const folder = join(root, path);
  return (
    existsSync(folder) && readdirSync(folder, { recursive: true }).some((file) => /\.(?:ttf|otf|woff2?)$/.test(file))
  );
}

const rows = shipped(root).map((entry) => {
  const licence = licenceOf(entry);
  const accept = (name) => permissive.has(name) || (name === fontsOnly && holdsFonts(entry.path));
  return { name: entry.name, version: entry.version, licence, allowed: satisfies(licence, accept) };
});

const width = (key) => Math.max(...rows.map((row) => row[key].length), 0);
for (const { name, version, licence, allowed } of rows) {
  console.log(
    `${allowed ? "ok     " : "REFUSED"} ${name.padEnd(width("name"))}  ${version.padEnd(width("version"))}  ${licence}`,
  );
}

const refused = rows.filter(({ allowed }) => !allowed);
if (refused.length > 0) {
  console.error(`\nLicences: ${refused.length} of ${rows.length} shipped packages refused.`);
  console.error(`Allowed: ${[...permissive].join(", ")}, and ${fontsOnly} for fonts.`);
  process.exitCode = 1;
} else {
  console.log(`Licences: ${rows.length} shipped ${rows.length === 1 ? "package" : "packages"}, all permissive.`);
}
