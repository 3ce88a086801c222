// npm run boundaries: imports point one way, pure packages stay pure, nothing imports itself round a circle.
import { checkBoundaries } from "./lib/boundaries/check.mjs";
import { root } from "./lib/run.mjs";

const violations = checkBoundaries(root);
for (const { file, line, found, expected } of violations) {
  console.error(`${file}:${line}\n  found:    ${found}\n  expected: ${expected}`);
}
if (violations.length > 0) {
  console.error(`\nBoundaries: ${violations.length} ${violations.length === 1 ? "violation" : "violations"}.`);
  process.exitCode = 1;
} else {
  console.log("Boundaries: no violations.");
}
