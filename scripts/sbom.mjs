// npm run sbom: what is shipped, as a bill of materials (CycloneDX), written to out/sbom.json. The same packages give the same bytes.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import { root, run, withoutTools } from "./lib/run.mjs";
import { shipped } from "./lib/shipped.mjs";

const target = resolve(process.argv[2] ?? join(root, "out/sbom.json"));
const asked = ["sbom", "--sbom-format", "cyclonedx"];
const { code, output } = await run("npm", asked, { capture: true, env: withoutTools });
if (code !== 0) {
  console.error(`npm sbom failed (exit ${code}). Run \`npm ci\` first.\n${output}`);
  process.exit(1);
}
const { serialNumber: _, ...bill } = JSON.parse(output.slice(output.indexOf("{"), output.lastIndexOf("}") + 1));
const { name, version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
// Neither when it was made nor in which folder says anything about what is shipped.
const { timestamp: __, ...metadata } = bill.metadata;
// What is shipped, asked of the lockfile: left to npm, what the tools use as well would be missing.
const kept = new Set(shipped(root).map(({ name, version }) => `${name}@${version}`));
const isShipped = ({ purl, "bom-ref": ref }) => purl.startsWith("pkg:npm/%40good-grounds/") || kept.has(ref);
const byName = (a, b) => (a["bom-ref"] < b["bom-ref"] ? -1 : 1);
/** A package of ours lies in a folder of another name, which is what npm calls it. */
const named = (component) => ({ ...component, name: component["bom-ref"].replace(/@[^@]*$/, "") });
const gone = new Set(bill.components.filter((one) => !isShipped(one)).map((one) => one["bom-ref"]));
const written = {
  ...bill,
  metadata: { ...metadata, tools: [], component: { ...metadata.component, name, version } },
  dependencies: bill.dependencies
    .filter(({ ref }) => !gone.has(ref))
    .map(({ ref, dependsOn }) => ({
      ref,
      dependsOn: dependsOn.filter((one) => !gone.has(one)),
    })),
  components: bill.components.filter(isShipped).map(named).toSorted(byName),
};
mkdirSync(dirname(target), { recursive: true });
writeFileSync(target, `${JSON.stringify(written, null, 2)}\n`);
console.log(`${target}: ${written.components.length} components`);
