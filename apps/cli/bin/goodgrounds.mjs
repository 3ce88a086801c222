#!/usr/bin/env node
import { existsSync } from "node:fs";
import * as module from "node:module";
import { fileURLToPath } from "node:url";

const bundle = new URL("../dist/main.mjs", import.meta.url);

if (existsSync(bundle)) {
  // The build leaves compiled code there, for this release of Node; another one compiles for itself and adds its own.
  module.enableCompileCache?.(fileURLToPath(new URL("../dist/compiled", import.meta.url)));
  await import(bundle.href);
} else {
  console.error("goodgrounds has not been built yet: run `npm run build` in the repository, then try again.");
  process.exitCode = 1;
}
