// Builds the field app into apps/field/dist: any static host can serve it.

import { createHash } from "node:crypto";
import { cpSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import * as esbuild from "esbuild";
import { gatheredTopics, textsWithin, topicsFrom } from "../../scripts/lib/gathered-topics.mjs";
import { notices, packageOf } from "./notices.mjs";
import { PAGE_POLICY } from "./policy.mjs";

const here = fileURLToPath(new URL(".", import.meta.url));
/** Where it goes: a folder may be named, so that a test can have a build of its own. */
const target = resolve(process.argv[2] ?? join(here, "dist"));
/** Built beside and moved at the end: whoever serves the old build never meets half of a new one. */
const dist = `${target}.${process.pid}`;
const fonts = join(here, "../../node_modules/@fontsource/source-sans-3/files");

/** The path of every file below a folder, in an order that does not depend on the disk. */
const filesBelow = (folder) =>
  readdirSync(folder, { recursive: true })
    .map((name) => String(name).replaceAll("\\", "/"))
    .filter((name) => statSync(join(folder, name)).isFile())
    .sort();

/** Nobody asks for worked examples on the device. All pieces of the engine load the topics from one file. */
const gathered = gatheredTopics({ examples: false });
const topics = topicsFrom("./topics.js");

const shared = {
  absWorkingDir: here,
  bundle: true,
  format: "esm",
  target: "es2022",
  minify: true,
  sourcemap: false,
  jsx: "automatic",
  jsxImportSource: "preact",
  legalComments: "none",
  metafile: true,
  external: ["./fonts/*"],
  plugins: [topics],
};

/** Folders of the packages from others that something of the app was made of. */
const packages = [];
const build = async (options) => {
  const { metafile } = await esbuild.build(options);
  for (const path of Object.keys(metafile.inputs)) {
    const folder = packageOf(path);
    if (folder !== undefined) packages.push(resolve(here, folder));
  }
};

mkdirSync(dist, { recursive: true });
process.on("exit", () => rmSync(dist, { recursive: true, force: true }));
cpSync(join(here, "static"), dist, { recursive: true });
const index = readFileSync(join(here, "static/index.html"), "utf8");
writeFileSync(join(dist, "index.html"), index.replace("PAGE_POLICY", PAGE_POLICY));
cpSync(join(here, "../../examples/terraced-house.json"), join(dist, "demonstration.json"));
mkdirSync(join(dist, "fonts"));
for (const weight of ["400", "600"])
  cpSync(
    join(fonts, `source-sans-3-latin-${weight}-normal.woff2`),
    join(dist, "fonts", `source-sans-3-${weight}.woff2`),
  );

// The layout engine for reports and its faces, fetched only when a report is first written on the device.
const modules = join(here, "../../node_modules");
mkdirSync(join(dist, "writer"));
cpSync(
  join(modules, "@myriaddreamin/typst-ts-web-compiler/pkg/typst_ts_web_compiler_bg.wasm"),
  join(dist, "writer/layout.wasm"),
);
for (const [name, face] of Object.entries({
  regular: "400Regular/SourceSans3_400Regular",
  italic: "400Regular_Italic/SourceSans3_400Regular_Italic",
  semibold: "600SemiBold/SourceSans3_600SemiBold",
  bold: "700Bold/SourceSans3_700Bold",
}))
  cpSync(join(modules, "@expo-google-fonts/source-sans-3", `${face}.ttf`), join(dist, `writer/${name}.ttf`));

/** The SHA-256 of a file that was built, by which the app knows it again. */
const hashOf = (name) =>
  createHash("sha256")
    .update(readFileSync(join(dist, name)))
    .digest("hex");
const hashesOf = (names, folder) => Object.fromEntries(names.map((name) => [name, hashOf(folder + name)]));
const parts = { WRITER_PARTS: JSON.stringify(hashesOf(filesBelow(join(dist, "writer")), "writer/")) };

// Screens that are seldom opened come as pieces of their own.
await build({
  ...shared,
  entryPoints: { app: "src/app.tsx" },
  outdir: dist,
  splitting: true,
  chunkNames: "pieces/[name]-[hash]",
});

/**
 * What the engine fetches on demand is built apart from it. Split from one build, everything that a package offers would
 * come with the first part that uses any of it.
 */
const pieces = {
  "engine/service/topics.ts": "engine-topics",
  "engine/service/outcome.ts": "engine-outcome",
  "engine/service/folder.ts": "engine-folder",
  "engine/service/issue.ts": "engine-issue",
  "engine/service/own-figures.ts": "engine-own-figures",
  "engine/service/reach.ts": "engine-reach",
  "engine/service/pictures.ts": "engine-pictures",
  "engine/service/trends.ts": "engine-trends",
  "writer/write.ts": "engine-writer",
};
const onDemand = {
  name: "on-demand",
  setup({ onResolve }) {
    onResolve({ filter: /\.ts$/ }, ({ kind, path, resolveDir }) => {
      const piece = kind === "dynamic-import" ? pieces[relative(join(here, "src"), join(resolveDir, path))] : undefined;
      return piece === undefined ? undefined : { path: `./${piece}.js`, external: true };
    });
  },
};
await build({ ...shared, entryPoints: { engine: "src/engine/worker.ts" }, outdir: dist, plugins: [onDemand, topics] });
await build({ ...shared, entryPoints: { "job-files": "src/record/job-files-worker.ts" }, outdir: dist });
for (const [source, name] of Object.entries(pieces))
  await build({
    ...shared,
    entryPoints: { [name]: `src/${source}` },
    outdir: dist,
    define: parts,
    plugins: [topics, textsWithin()],
  });
await build({
  ...shared,
  entryPoints: { topics: join(here, "../../packages/topics/src/gathered.ts") },
  outdir: dist,
  plugins: [gathered],
});

// Copies are written and read in a worker of their own: the content policy lets none be made from a blob.
await build({ ...shared, entryPoints: { copies: "src/hand-over/worker.ts" }, outdir: dist });

// One style sheet of every .css file under src: a piece that is fetched later would bring none of its own.
const first = ["look/tokens.css", "look/base.css"];
const styles = [
  ...first,
  ...filesBelow(join(here, "src")).filter((name) => name.endsWith(".css") && !first.includes(name)),
];
await build({
  ...shared,
  stdin: { contents: styles.map((name) => `@import "./src/${name}";`).join("\n"), resolveDir: here, loader: "css" },
  outfile: join(dist, "app.css"),
});

// Licences are passed on with what they are for.
for (const name of [
  "@myriaddreamin/typst-ts-web-compiler",
  "@expo-google-fonts/source-sans-3",
  "@fontsource/source-sans-3",
])
  packages.push(join(modules, name));
writeFileSync(join(dist, "licences.txt"), notices(packages, join(here, "../..")));

/** Everything the app needs offline, by its hash, and the hash that tells one build from the next. */
const files = hashesOf(
  filesBelow(dist).filter((name) => !name.startsWith("writer/")),
  "",
);
const { "index.html": page, ...others } = files;
const version = createHash("sha256").update(JSON.stringify([files, parts]));
await build({
  ...shared,
  entryPoints: { "service-worker": "src/service-worker.ts" },
  outdir: dist,
  format: "iife",
  define: {
    ...parts,
    FILES: JSON.stringify({ "./": page, ...others }),
    VERSION: JSON.stringify(version.digest("hex").slice(0, 16)),
  },
});
rmSync(target, { recursive: true, force: true });
renameSync(dist, target);
console.log(`${relative(process.cwd(), target)}  ${Object.keys(files).length + 1} files`);
