#!/usr/bin/env node
import { existsSync } from "node:fs";

const bundle = new URL("../dist/main.mjs", import.meta.url);

if (existsSync(bundle)) {
  await import(bundle.href);
} else {
  console.error("goodgrounds has not been built yet: run `npm run build` in the repository, then try again.");
  process.exitCode = 1;
}
