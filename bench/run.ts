/** Measures everything in one run and writes bench/results/latest.md. Needs a build, and LibreOffice for the spreadsheet. */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus, totalmem } from "node:os";
import { benchGrowth, benchLooks } from "./growth.ts";
import { benchInteraction } from "./interaction.ts";
import type { Row } from "./measure.ts";
import { benchReasoningInBrowser, benchRuleEngines } from "./reasoning.ts";
import { benchSpreadsheet } from "./spreadsheet.ts";
import { benchStart } from "./start.ts";
import { benchStream } from "./stream.ts";
import { benchWeigh } from "./weigh.ts";

const groups: readonly (readonly [string, () => readonly Row[] | Promise<readonly Row[]>])[] = [
  ["Weighing against a flat loop without grounds", benchWeigh],
  ["Whole processes", benchStart],
  ["The longest looks, at one size and at twice that size", benchGrowth],
  ["Looks that somebody waits for", benchLooks],
  ["Touches and keys in the field app", benchInteraction],
  ["A stream of many installations", () => benchStream()],
  ["The largest topics in a browser", benchReasoningInBrowser],
  ["The rules of the largest topic in other engines", benchRuleEngines],
  ["A spreadsheet doing some of the same", benchSpreadsheet],
];

const lines = [
  "# Measured",
  "",
  `${cpus()[0]?.model ?? "unknown processor"}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}. All figures of one run; ratios are against the first line of their group and hold when the machine's speed drifts, single times do not.`,
  "",
];
for (const [title, measure] of groups) {
  process.stderr.write(`${title}...\n`);
  lines.push(`## ${title}`, "", "| what | value | ratio | asked for |", "|---|---|---|---|");
  for (const { what, value, unit, ratio, target } of await measure()) {
    const figure = value >= 100 ? value.toFixed(0) : value.toPrecision(3);
    const asked = target === undefined ? "" : ratio === undefined ? `at most ${target} ${unit}` : `at most ${target}×`;
    lines.push(`| ${what} | ${figure} ${unit} | ${ratio === undefined ? "" : `${ratio.toFixed(2)}×`} | ${asked} |`);
  }
  lines.push("");
}
writeFileSync(new URL("results/latest.md", import.meta.url), lines.join("\n"));
execFileSync("cat", [new URL("results/latest.md", import.meta.url).pathname], { stdio: "inherit" });
