// npm run build: bundles the command line into apps/cli/dist, so that it runs on Node 20 and starts fast.
import { execFileSync } from "node:child_process";
import { existsSync, rmSync } from "node:fs";
import { join, relative } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "esbuild";
import { textsBeside, topicsBeside } from "../../scripts/lib/gathered-topics.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));

// Packages with a native binary stay in node_modules.
const native = ["@myriaddreamin/typst-ts-node-compiler"];

const requireForModules = [
  'import { createRequire as requireFrom } from "node:module";',
  "const require = requireFrom(import.meta.url);",
].join("\n");

const dist = join(here, "dist");

/** What most files never need is loaded where one does: the schema, for a file that does not plainly fit. */
const schemaApart = {
  name: "schema-apart",
  setup({ onLoad }) {
    onLoad({ filter: /[\\/]packages[\\/]inspection[\\/]src[\\/]by-schema\.ts$/ }, () => ({
      contents: [
        'import { createRequire } from "node:module";',
        "let schema;",
        "export function bySchema(document) {",
        '  schema ??= createRequire(import.meta.url)("./by-schema.cjs");',
        "  return schema.bySchema(document);",
        "}",
      ].join("\n"),
      loader: "js",
    }));
  },
};

function bundleSchema() {
  return build({
    absWorkingDir: here,
    entryPoints: ["../../packages/inspection/src/by-schema.ts"],
    outfile: "dist/by-schema.cjs",
    bundle: true,
    platform: "node",
    target: "node20",
    format: "cjs",
    minifyWhitespace: true,
    minifySyntax: true,
    sourcemap: true,
    metafile: true,
  });
}

function bundle(entryPoints, banner) {
  return build({
    absWorkingDir: here,
    entryPoints,
    outdir: "dist",
    outExtension: { ".js": ".mjs" },
    bundle: true,
    // What several commands need is a piece of its own, and no command loads what only others need.
    splitting: true,
    chunkNames: "piece-[hash]",
    // Shorter to read and compile; names stay, so that a fault says where it is.
    minifyWhitespace: true,
    minifySyntax: true,
    platform: "node",
    target: "node20",
    format: "esm",
    external: native,
    sourcemap: true,
    metafile: true,
    plugins: [topicsBeside(dist), textsBeside(dist), schemaApart],
    banner: { js: banner },
  });
}

// worker.ts is there once there is work worth a thread of its own.
const entryPoints = ["src/main.ts", ...(existsSync(join(here, "src/worker.ts")) ? ["src/worker.ts"] : [])];

async function bundleAll() {
  rmSync(dist, { recursive: true, force: true });
  const { metafile } = await bundle(entryPoints, "");
  // A bundled CommonJS package that asks for a Node module needs a `require`, which an ES module does not have.
  const imports = Object.values(metafile.outputs).flatMap((output) => output.imports);
  if (!imports.some(({ kind }) => kind === "require-call")) return metafile;
  return (await bundle(entryPoints, requireForModules)).metafile;
}

try {
  const { outputs } = await bundleAll();
  const all = { ...outputs, ...(await bundleSchema()).metafile.outputs };
  for (const [path, { bytes }] of Object.entries(all)) {
    if (!path.endsWith(".map"))
      console.log(`${relative(process.cwd(), join(here, path))}  ${Math.ceil(bytes / 1024)} kB`);
  }
  // One run of each kind leaves its compiled code beside the bundle, for every later one.
  const house = join(here, "../../examples/terraced-house.json");
  for (const args of [["weigh", house], ["weigh", "--json", house], ["--help"]])
    execFileSync(process.execPath, [join(here, "bin/goodgrounds.mjs"), ...args], { stdio: "ignore" });
} catch (error) {
  // esbuild has already printed what is wrong with the sources.
  if (!error.errors) throw error;
  process.exitCode = 1;
}
