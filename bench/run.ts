/**
 * Measures everything, or the groups named, in one run and writes bench/results/latest.md, which holds nothing but that run.
 * Needs a build, and LibreOffice for the spreadsheet.
 */
import { execFileSync } from "node:child_process";
import { writeFileSync } from "node:fs";
import { cpus, totalmem } from "node:os";
import { benchGrowth, benchLooks } from "./growth.ts";
import { benchInteraction } from "./interaction.ts";
import type { Row } from "./measure.ts";
import { benchJudgement, benchReading } from "./reading.ts";
import { benchReasoningInBrowser, benchRuleEngines } from "./reasoning.ts";
import { benchSpreadsheet } from "./spreadsheet.ts";
import { benchStart } from "./start.ts";
import { benchStream } from "./stream.ts";
import { benchWeigh } from "./weigh.ts";

type Group = readonly [title: string, measure: () => readonly Row[] | Promise<readonly Row[]>];

const GROUPS: Readonly<Record<string, Group>> = {
  weigh: ["Weighing against a flat loop without grounds", benchWeigh],
  reading: ["Reading and checking a text against JSON.parse", benchReading],
  judgement: ["A job from its text", benchJudgement],
  start: ["Whole processes", benchStart],
  growth: ["The longest looks, at one size and at twice that size", benchGrowth],
  looks: ["Looks that somebody waits for", benchLooks],
  touches: ["Touches and keys in the field app", benchInteraction],
  stream: ["A stream of many installations", benchStream],
  browser: ["The largest topics in a browser", benchReasoningInBrowser],
  engines: ["The rules of the largest topic in other engines", benchRuleEngines],
  spreadsheet: ["A spreadsheet doing some of the same", benchSpreadsheet],
};

const named = process.argv.slice(2);
const unknown = named.find((name) => !Object.hasOwn(GROUPS, name));
if (unknown !== undefined) {
  console.error(`No group is called ${unknown}. The groups are ${Object.keys(GROUPS).join(", ")}.`);
  process.exit(2);
}

const lines = [
  "# Measured",
  "",
  `${cpus()[0]?.model ?? "unknown processor"}, ${cpus().length} cores, ${Math.round(totalmem() / 2 ** 30)} GiB, Node ${process.version}. All figures of one run. Times of computing are processor time, of works in turn the best of each, since other work on the machine only adds; ratios are against the first line of their group and hold when the machine's speed drifts, single times do not.`,
  "",
];
for (const name of named.length > 0 ? named : Object.keys(GROUPS)) {
  const [title, measure] = GROUPS[name] as Group;
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
