// Fills the disk under a browser that writes, many times, and writes what was found: node outside/field/full-disk-results.ts
import { writeFileSync } from "node:fs";
import { fullDiskTest } from "./full-disk.ts";

const TIMES = Number(process.argv[2] ?? 20);

const found = await fullDiskTest(TIMES);
if (found === undefined)
  throw new Error("a small file system cannot be mounted here: run this as a user who may mount");
const { times, kept, keptAsItFilled, refused, lost, damaged } = found;

writeFileSync(
  new URL("full-disk-results.md", import.meta.url),
  `# A disk that is full

Written by \`node outside/field/full-disk-results.ts\`. The browser's folder is on a small file system. A page writes entries
through the app's own stores, meanwhile the disk is filled but for 64 kB, the page writes on until entries are
refused, and the browser is killed. Then there is room again; the browser is started, writes one entry, is killed, and is started once more.
Every entry of which the page was told that it is kept is looked for and compared.

| times | entries said to be kept | of these as the disk ran full | times an entry was refused and told | lost | damaged |
| ---: | ---: | ---: | ---: | ---: | ---: |
| ${times} | ${kept} | ${keptAsItFilled} | ${refused} | ${lost} | ${damaged} |
`,
);
console.log(found);
