// What the scripts decide by themselves. Run with: node --test scripts/helpers.test.mjs
import assert from "node:assert/strict";
import { mkdirSync, mkdtempSync, rmSync, utimesSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { test } from "node:test";
import { installIsCurrent, oldNode } from "./lib/install.mjs";
import { viewer } from "./lib/open-file.mjs";
import { describeMissing, outsideToolsEnv } from "./lib/outside-tools.mjs";
import { shouldServe } from "./lib/should-serve.mjs";
import { satisfies } from "./lib/spdx.mjs";
import { fileFor, serve } from "./lib/static-server.mjs";
import { projectsAsked } from "./lib/type-projects.mjs";
import { counts } from "./lib/vitest-result.mjs";

test("types are checked of everything, or of what is named, however its folder is written", () => {
  const all = ["packages/core/tsconfig.json", "packages/tables/tsconfig.json", "tsconfig.tests.json"];
  assert.deepEqual(projectsAsked(all, []), { projects: all, unknown: [] });
  for (const named of ["packages/core", "packages/core/", "./packages/core", "packages/core/tsconfig.json"])
    assert.deepEqual(projectsAsked(all, [named]), { projects: ["packages/core/tsconfig.json"], unknown: [] }, named);
  assert.deepEqual(projectsAsked(all, ["tsconfig.tests.json", "packages/core", "packages/core"]), {
    projects: ["packages/core/tsconfig.json", "tsconfig.tests.json"],
    unknown: [],
  });
});

test("a package that is not there is told, not passed over", () => {
  const all = ["packages/core/tsconfig.json"];
  assert.deepEqual(projectsAsked(all, ["packages/cor", "core"]), { projects: [], unknown: ["packages/cor", "core"] });
});

test("a licence expression is met by one of a choice and by all of a conjunction", () => {
  const accept = (name) => ["MIT", "ISC"].includes(name);
  const met = [
    "MIT",
    "(MIT OR GPL-3.0)",
    "GPL-3.0 OR ISC",
    "MIT AND ISC",
    "(GPL-3.0 OR MIT) AND ISC",
    "MPL-2.0 OR (MIT)",
  ];
  const notMet = [
    "GPL-3.0",
    "MIT AND GPL-3.0",
    "MIT AND (GPL-3.0 OR MPL-2.0)",
    "GPL-3.0 OR MIT AND MPL-2.0",
    "MIT WITH something",
    "SEE LICENSE IN LICENSE",
    "not stated",
    "UNLICENSED",
    "(MIT",
    "MIT OR",
    "",
  ];
  for (const expression of met) assert.equal(satisfies(expression, accept), true, expression);
  for (const expression of notMet) assert.equal(satisfies(expression, accept), false, expression);
});

test("an install is current when it is complete and not older than the lockfile", () => {
  const folder = mkdtempSync(join(tmpdir(), "install-"));
  try {
    writeFileSync(join(folder, "package-lock.json"), "{}");
    assert.equal(installIsCurrent(folder), false, "no node_modules");
    mkdirSync(join(folder, "node_modules"));
    assert.equal(installIsCurrent(folder), false, "an install that was broken off");
    const installed = join(folder, "node_modules", ".package-lock.json");
    writeFileSync(installed, "{}");
    utimesSync(installed, 2000, 2000);
    utimesSync(join(folder, "package-lock.json"), 1000, 1000);
    assert.equal(installIsCurrent(folder), true, "lockfile older");
    utimesSync(join(folder, "package-lock.json"), 3000, 3000);
    assert.equal(installIsCurrent(folder), false, "lockfile newer");
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("an old Node is told what to do", () => {
  assert.equal(oldNode("20.0.0"), undefined);
  assert.equal(oldNode("24.21.0"), undefined);
  assert.match(oldNode("18.20.1"), /needs Node\.js 20 or newer; this is Node\.js 18\.20\.1/);
});

test("the report is opened only where somebody is looking", () => {
  assert.equal(viewer({ DISPLAY: ":0" }, "linux", false), undefined, "no terminal");
  assert.equal(viewer({}, "linux", true), undefined, "no desktop");
  assert.equal(viewer({ CI: "true" }, "darwin", true), undefined);
  assert.equal(viewer({ SSH_CONNECTION: "a b" }, "darwin", true), undefined);
  assert.equal(viewer({}, "darwin", true).command, "open");
  assert.deepEqual(viewer({}, "win32", true), { command: "cmd", args: ["/c", "start", ""] });
});

test("the field app is served only to somebody at a terminal, or on request", () => {
  assert.equal(shouldServe([], {}, true), true);
  assert.equal(shouldServe([], {}, false), false, "no terminal");
  assert.equal(shouldServe([], { CI: "true" }, true), false);
  assert.equal(shouldServe(["--serve"], { CI: "true" }, false), true);
  assert.equal(shouldServe(["--no-serve", "--serve"], {}, true), false);
});

test("the static server hands out files of its folder and nothing else", async () => {
  const outer = mkdtempSync(join(tmpdir(), "served-"));
  const folder = join(outer, "inner");
  mkdirSync(join(folder, "sub"), { recursive: true });
  writeFileSync(join(outer, "secret.txt"), "no");
  writeFileSync(join(outer, "inner-too.txt"), "no");
  writeFileSync(join(folder, "index.html"), "<p>here</p>");
  writeFileSync(join(folder, "sub", "a b.js"), "1");
  try {
    for (const url of [
      "/../secret.txt",
      "/%2e%2e/secret.txt",
      "/..%2fsecret.txt",
      "/..%2finner-too.txt",
      "/sub",
      "/%00",
      "/%",
    ])
      assert.equal(fileFor(folder, url), undefined, url);
    const server = await serve(folder);
    const second = await serve(folder, { port: Number(new URL(server.address).port), tries: 5 });
    try {
      assert.match(server.address, /^http:\/\/localhost:\d+\/$/);
      assert.notEqual(second.address, server.address, "a port that is taken is passed over");
      const page = await fetch(server.address);
      assert.equal(await page.text(), "<p>here</p>");
      assert.match(page.headers.get("content-type"), /^text\/html/);
      assert.equal((await fetch(`${server.address}sub/a%20b.js?x=1`)).status, 200);
      assert.equal((await fetch(`${server.address}none`)).status, 404);
      assert.equal((await fetch(server.address, { method: "POST" })).status, 404);
    } finally {
      await Promise.all([server.stop(), second.stop()]);
    }
  } finally {
    rmSync(outer, { recursive: true, force: true });
  }
});

test("missing outside tools are named to the reader and to the tests", () => {
  const missing = [{ debian: "ngspice", checks: "circuits" }];
  assert.match(describeMissing(missing), /apt-get install --no-install-recommends ngspice$/);
  assert.deepEqual(outsideToolsEnv({ missing, python: "python3" }), {
    GOOD_GROUNDS_MISSING_TOOLS: "ngspice",
    GOOD_GROUNDS_PYTHON: "python3",
  });
  assert.deepEqual(outsideToolsEnv({ missing: [], python: undefined }), { GOOD_GROUNDS_MISSING_TOOLS: "" });
});

test("the closing count never hides a failure", () => {
  const file = (status, ...tests) => ({ status, assertionResults: tests.map((one) => ({ status: one })) });
  const report = (numPassedTests, numFailedTests, ...testResults) => ({ numPassedTests, numFailedTests, testResults });
  assert.deepEqual(counts(report(2, 0, file("passed", "passed", "passed")), 0), { passed: 2, failed: 0, skipped: 0 });
  assert.deepEqual(counts(report(1, 1, file("failed", "passed", "failed")), 1), { passed: 1, failed: 1, skipped: 0 });
  assert.equal(counts(report(1, 0, file("passed", "passed"), file("failed")), 1).failed, 1, "a file that did not load");
  assert.equal(counts(report(1, 0, file("passed", "passed")), 1).failed, 1, "an error outside any test");
  assert.equal(counts(undefined, 1).failed, 1, "no report at all");
});
