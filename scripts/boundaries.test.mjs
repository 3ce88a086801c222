// biome-ignore-all lint/suspicious/noTemplateCurlyInString: TypeScript sources are given as strings.
// The boundary checker, fed small trees with known faults. Run with: node --test scripts/boundaries.test.mjs
import assert from "node:assert/strict";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { test } from "node:test";
import { checkBoundaries } from "./lib/boundaries/check.mjs";
import { importsOf } from "./lib/boundaries/source.mjs";

const all = [
  "packages/core",
  "packages/tables",
  "packages/inspection",
  "packages/measurement",
  "packages/computations",
  "packages/readings",
  "packages/judgement",
  "packages/report",
];
const apps = ["apps/cli", "apps/field"];

/** Checks a tree with every package present and the given files, and returns "file:line found" for each violation. */
function violations(files) {
  const root = mkdtempSync(join(tmpdir(), "boundaries-"));
  try {
    for (const path of [...all, ...apps]) {
      const name = `@good-grounds/${path.split("/")[1]}`;
      const exports = { ".": "./src/index.ts", "./fixtures/*": "./fixtures/*" };
      write(root, `${path}/package.json`, JSON.stringify({ name, exports }));
    }
    for (const [path, text] of Object.entries(files)) write(root, path, text);
    return checkBoundaries(root);
  } finally {
    rmSync(root, { recursive: true });
  }
}

function write(root, path, text) {
  mkdirSync(dirname(join(root, path)), { recursive: true });
  writeFileSync(join(root, path), text);
}

function found(files) {
  return violations(files).map((violation) => `${violation.file}:${violation.line} ${violation.found}`);
}

test("imports that point the right way are accepted", () => {
  const files = {
    "packages/core/src/index.ts": 'export { a } from "./a.ts";\n',
    "packages/core/src/a.ts": "export const a = 1;\n",
    "packages/tables/src/index.ts": 'import { a } from "@good-grounds/core";\n',
    "packages/inspection/src/index.ts": 'import { z } from "zod";\nimport * as m from "zod/mini";\n',
    "packages/computations/src/index.ts":
      'import "@good-grounds/core";\nimport "@good-grounds/tables";\nimport "@good-grounds/inspection";\n',
    "packages/readings/src/index.ts": 'import "@good-grounds/computations";\nimport "@good-grounds/tables";\n',
    "packages/judgement/src/index.ts": 'import "@good-grounds/readings";\nimport "@good-grounds/computations";\n',
    "packages/report/src/index.ts": 'import "@good-grounds/inspection";\nimport { scale } from "d3-scale";\n',
    "packages/report/src/pdf/write.ts": 'import { readFileSync } from "node:fs";\n',
    "apps/cli/src/main.ts": 'import "@good-grounds/report";\nimport "@good-grounds/judgement";\nimport "node:fs";\n',
    "apps/field/src/main.ts": 'import("@good-grounds/core/fixtures/house.json");\n',
  };
  assert.deepEqual(found(files), []);
});

test("core imports nothing, in whatever form", () => {
  const text = [
    'import { z } from "zod";',
    "import type { A } from '@good-grounds/tables';",
    'export * from "node:fs";',
    'const path = await import("path");',
    'type T = import("@good-grounds/inspection").T;',
    "const computed = await import(name);",
    'import {\n  a,\n  b,\n} from "../../tables/src/index.ts";',
  ].join("\n");
  assert.deepEqual(found({ "packages/core/src/index.ts": text }), [
    'packages/core/src/index.ts:1 import "zod"',
    'packages/core/src/index.ts:2 import "@good-grounds/tables"',
    'packages/core/src/index.ts:3 import "node:fs"',
    'packages/core/src/index.ts:4 import "path"',
    'packages/core/src/index.ts:5 import "@good-grounds/inspection"',
    "packages/core/src/index.ts:6 import of a computed name",
    'packages/core/src/index.ts:10 import "../../tables/src/index.ts"',
  ]);
});

for (const [from, to] of [
  ["tables", "@good-grounds/inspection"],
  ["tables", "zod"],
  ["inspection", "@good-grounds/tables"],
  ["inspection", "node:fs"],
  ["inspection", "zod-extra"],
  ["tables", "@good-grounds/computations"],
  ["inspection", "@good-grounds/computations"],
  ["measurement", "@good-grounds/computations"],
  ["measurement", "zod"],
  ["computations", "@good-grounds/readings"],
  ["computations", "@good-grounds/judgement"],
  ["computations", "@good-grounds/report"],
  ["computations", "zod"],
  ["readings", "@good-grounds/judgement"],
  ["readings", "@good-grounds/report"],
  ["readings", "node:fs"],
  ["judgement", "@good-grounds/report"],
  ["judgement", "@good-grounds/assembly"],
  ["judgement", "zod"],
  ["report", "@good-grounds/computations"],
  ["report", "@good-grounds/readings"],
  ["report", "@good-grounds/judgement"],
  ["report", "@good-grounds/tables"],
  ["report", "node:fs"],
  ["report", "fs/promises"],
  ["report", "@good-grounds/cli"],
  ["report", "@good-grounds/nowhere"],
  ["report", "@good-grounds/report"],
  ["report", "#inside"],
]) {
  test(`${from} may not import ${to}`, () => {
    const file = `packages/${from}/src/index.ts`;
    assert.deepEqual(found({ [file]: `\nimport { x } from "${to}";\n` }), [`${file}:2 import "${to}"`]);
  });
}

test("apps may not import each other, by name or by path", () => {
  const text = 'import "@good-grounds/field";\nimport "../../field/src/main.ts";\n';
  assert.equal(found({ "apps/cli/src/main.ts": text, "apps/field/src/main.ts": "" }).length, 2);
});

test("another package is entered by its name or a declared subpath only", () => {
  const text = 'import "@good-grounds/core/src/a.ts";\nimport "@good-grounds/core/fixtures/a.json";\n';
  assert.deepEqual(found({ "apps/cli/src/main.ts": text }), [
    'apps/cli/src/main.ts:1 import "@good-grounds/core/src/a.ts"',
  ]);
});

test("tests may import anything, but nothing may import a test", () => {
  const files = {
    "packages/core/src/a.test.ts": 'import "vitest";\nimport "@good-grounds/report";\nconsole.log(Date.now());\n',
    "packages/core/src/a.ts": 'import "./a.test.ts";\n',
  };
  assert.deepEqual(found(files), ['packages/core/src/a.ts:1 import "./a.test.ts"']);
});

test("pure packages may not use clock, chance, locale or host", () => {
  const text = [
    "Date.now();",
    "new Date();",
    "new Date;",
    "Math.random();",
    "(1).toLocaleString();",
    "new Intl.NumberFormat();",
    "process.env;",
    "console.log();",
    "globalThis.fetch;",
    '"a".localeCompare("b");',
    "Date();",
  ].join("\n");
  for (const folder of ["core", "tables", "measurement", "computations", "readings", "judgement"]) {
    const lines = violations({ [`packages/${folder}/src/index.ts`]: text }).map(({ line }) => line);
    assert.deepEqual(lines, [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11], folder);
  }
  assert.deepEqual(found({ "packages/report/src/index.ts": text }), []);
});

test("words that only look like clock, locale or host are accepted", () => {
  const text = [
    "// process, console and new Date() in a comment",
    "const text = \"Date.now() and import x from 'zod'\";",
    "const parsed = new Date(text);",
    "interface Step { process: string; console?: string }",
    "step.process;",
    "const pattern = /new Date() import('zod') [/'\"`]/;",
    "const half = 1 / 2; // import 'zod'",
    "`${`${half} Date.now()`} process`;",
    "const more = `console ${half / 2} import('zod')`;",
    "/* import 'zod' */",
  ].join("\n");
  assert.deepEqual(found({ "packages/core/src/index.ts": text }), []);
});

test("code inside a template is still read", () => {
  assert.equal(found({ "packages/core/src/index.ts": "`a ${{ b: Date.now() }.b} c`;\n" }).length, 1);
});

test("reference directives are refused", () => {
  const text = '/// <reference types="node" />\n';
  assert.equal(found({ "packages/core/src/index.ts": text }).length, 1);
});

test("an import cycle is found once, with its way round", () => {
  const files = {
    "packages/core/src/a.ts": 'import { b } from "./b.ts";\n',
    "packages/core/src/b.ts": '\nexport { c } from "./inner/c.ts";\n',
    "packages/core/src/inner/c.ts": 'import { type A } from "../a.ts";\n',
  };
  const [only, ...others] = violations(files);
  assert.deepEqual(others, []);
  assert.match(only.found, /src\/a\.ts:1 -> .*src\/b\.ts:2 -> .*inner\/c\.ts:1 -> .*src\/a\.ts$/);
});

test("an import cycle closed by import type is no cycle", () => {
  const files = {
    "packages/core/src/a.ts": 'import { b } from "./b.ts";\n',
    "packages/core/src/b.ts": 'import type { A } from "./a.ts";\nexport type { B } from "./a.ts";\n',
  };
  assert.deepEqual(found(files), []);
});

test("a file that imports itself is a cycle", () => {
  assert.equal(found({ "apps/cli/src/a.ts": 'import "./a.ts";\n' }).length, 1);
});

test("a package without a rule is refused", () => {
  const files = { "packages/extra/package.json": '{ "name": "@good-grounds/extra" }' };
  assert.deepEqual(found(files), ["packages/extra/package.json:1 package extra"]);
});

test("every violation says what was expected", () => {
  const [violation] = violations({ "packages/core/src/index.ts": 'import "zod";\n' });
  assert.equal(violation.expected, "core imports nothing");
});

test("a default import called type is not a type import", () => {
  assert.deepEqual(
    importsOf('import type from "a";\nimport type, { b } from "b";\nimport type C from "c";\n').map((i) => i.typeOnly),
    [false, false, true],
  );
});
