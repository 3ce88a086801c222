// npm run build: bundles the command line into apps/cli/dist, so that it runs on Node 20 and starts fast.
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
    plugins: [topicsBeside(join(here, "dist")), textsBeside(join(here, "dist"))],
    banner: { js: banner },
  });
}

// worker.ts is there once there is work worth a thread of its own.
const entryPoints = ["src/main.ts", ...(existsSync(join(here, "src/worker.ts")) ? ["src/worker.ts"] : [])];

async function bundleAll() {
  rmSync(join(here, "dist"), { recursive: true, force: true });
  const { metafile } = await bundle(entryPoints, "");
  // A bundled CommonJS package that asks for a Node module needs a `require`, which an ES module does not have.
  const imports = Object.values(metafile.outputs).flatMap((output) => output.imports);
  if (!imports.some(({ kind }) => kind === "require-call")) return metafile;
  return (await bundle(entryPoints, requireForModules)).metafile;
}

try {
  const { outputs } = await bundleAll();
  for (const [path, { bytes }] of Object.entries(outputs)) {
    if (path.endsWith(".mjs"))
      console.log(`${relative(process.cwd(), join(here, path))}  ${Math.ceil(bytes / 1024)} kB`);
  }
} catch (error) {
  // esbuild has already printed what is wrong with the sources.
  if (!error.errors) throw error;
  process.exitCode = 1;
}
