// npm run nightly: the tests with a seed of their own and many more random examples, for the hours when nobody waits.
//   npm run nightly -- --seed 123 --times 50 packages/core
import { randomInt } from "node:crypto";
import { parseArgs } from "node:util";
import { outsideTools, outsideToolsEnv } from "./lib/outside-tools.mjs";
import { run } from "./lib/run.mjs";

const USAGE = "npm run nightly -- [--seed NUMBER] [--times NUMBER] [part of a path]...";

function wholeNumber(name, text) {
  const number = Number(text);
  if (Number.isSafeInteger(number) && number >= 1 && number < 2 ** 31) return number;
  console.error(`--${name} is "${text}"; a whole number from 1 to ${2 ** 31 - 1} is needed.\n${USAGE}`);
  process.exit(2);
}

const { values, positionals } = parseArgs({
  options: { seed: { type: "string" }, times: { type: "string", default: "20" } },
  allowPositionals: true,
});
const seed = values.seed === undefined ? randomInt(1, 2 ** 31) : wholeNumber("seed", values.seed);
const times = wholeNumber("times", values.times);
const again = ["npm run nightly --", "--seed", seed, "--times", times, ...positionals].join(" ");

console.log(`Seed ${seed}, ${times} times as many random examples.`);
const env = {
  ...outsideToolsEnv(await outsideTools()),
  GOOD_GROUNDS_SEED: String(seed),
  GOOD_GROUNDS_TIMES: String(times),
};
const { code } = await run("vitest", ["run", ...positionals], { env });
console.log(code === 0 ? `\nAll held with seed ${seed}.` : `\nFailed with seed ${seed}. The same again: ${again}`);
process.exitCode = code === 0 ? 0 : 1;
