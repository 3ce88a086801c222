// Kills pages and the whole browser at hundreds of random instants and writes what was found: node outside/field/kill-results.ts
import { writeFileSync } from "node:fs";
import { type Found, type Kill, killTest } from "./kill.ts";

/** So many kills of the browser, and three times as many of a page. */
const LAUNCHES = Number(process.argv[2] ?? 126);
const PAGES_EACH = 3;
const SEED = 1;

const KINDS: Readonly<Record<Kill, string>> = {
  page: "the page's process crashes",
  browser: "every process of the browser is killed (SIGKILL)",
  files: "all of these once more, from the files alone",
};

const start = Date.now();
const found = await killTest({
  launches: LAUNCHES,
  pagesEach: PAGES_EACH,
  seed: SEED,
  emptied: true,
  tell: console.log,
});
const rows = (Object.entries(found) as readonly (readonly [Kill, Found])[]).map(
  ([kind, { kills, kept, lost, damaged, untold }]) =>
    `| ${KINDS[kind]} | ${kills} | ${kept} | ${lost} | ${damaged} | ${untold} |`,
);

writeFileSync(
  new URL("kill-results.md", import.meta.url),
  `# Killed at random instants

Written by \`node outside/field/kill-results.ts\` (${Math.round((Date.now() - start) / 1000)} s). Four writers at once write entries of a few letters to
some pages through the app's own store, each waiting until its entry is kept; between 0 and 300 ms after the first write
the kill comes. The same folder of the browser is then opened anew and every entry is looked for and compared.

| kill | instants | entries said to be kept | of these lost | damaged, or a record with holes | there before it was said |
| --- | ---: | ---: | ---: | ---: | ---: |
${rows.join("\n")}

At the last start the browser's database is taken away before, as the browser itself did twice in some 140 kills when
the app kept one store (it takes its database for damaged and begins an empty one without a word). Then every job of
this table is looked at once more: the files of the jobs alone have to hold all of it.

A crash of the page shows that nothing of what was said to be kept was still in the page. A kill of the whole browser
shows that nothing of it was still in any process of the browser, and that the browser finds its store in order
afterwards. Neither shows what a loss of power does: the operating system lives on. For that the store asks the browser
to write through to the disk (durability "strict", and a flush of the file of the job) before an entry counts as kept.
`,
);
console.log(found);
