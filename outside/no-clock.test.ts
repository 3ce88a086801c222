import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const root = fileURLToPath(new URL("..", import.meta.url));

/** What makes a test hold on one machine and not on another, or today and not tomorrow. */
const NOT_IN_TESTS: readonly (readonly [RegExp, string])[] = [
  [
    /\bperformance\.now\(|\bDate\.now\(|\bhrtime\b|\bconsole\.time/,
    "reads a clock: what measures speed goes to bench/",
  ],
  [/\bwaitForTimeout\(|\bsetTimeout\(|\bsetInterval\(|timers\/promises/, "sleeps: await the event itself"],
  [/\bMath\.random\(|\bgetRandomValues\(/, "draws at random: give it a seed"],
  [/\}, \d[\d_]{3,}\);|\btimeout: \d|\bsetDefaultTimeout\(\d/, "has a limit of its own: use outside/patience.ts"],
];

/** Files that hold such words for another reason. */
const ALLOWED: readonly string[] = [
  // Kills browsers at random instants, drawn with a seed; its results name the time they took.
  "outside/field/kill.ts",
  "outside/field/kill-results.ts",
  // Times for people to read, not to decide by.
  "outside/diagnosis/measure-rings.ts",
  "outside/diagnosis/run-installation.ts",
  "outside/no-clock.test.ts",
];

const files = ["packages", "apps", "outside", "examples"]
  .flatMap((folder) =>
    readdirSync(`${root}${folder}`, { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map(({ parentPath, name }) => `${parentPath.replaceAll("\\", "/")}/${name}`.slice(root.length)),
  )
  .filter((path) => !/\/(node_modules|dist)\//.test(path))
  .filter((path) => (path.startsWith("outside/") ? /\.m?ts$/.test(path) : /\.test\.m?[jt]s$/.test(path)))
  .filter((path) => !ALLOWED.includes(path));

test("no test reads a clock, sleeps, draws without a seed or has a limit of time of its own", () => {
  expect(files.length).toBeGreaterThan(150);
  const found = files.flatMap((path) =>
    readFileSync(`${root}${path}`, "utf8")
      .split("\n")
      .flatMap((line, i) =>
        NOT_IN_TESTS.filter(([words]) => words.test(line)).map(([, why]) => `${path}:${i + 1} ${why}`),
      ),
  );
  expect(found).toEqual([]);
});

test("what makes it fail is found", () => {
  for (const line of [
    "const start = performance.now();",
    "await page.waitForTimeout(500);",
    "await new Promise((done) => setTimeout(done, 20));",
    "const n = Math.random();",
    "  }, 60_000);",
    'test("x", { timeout: 60_000 }, () => {',
  ])
    expect({ line, found: NOT_IN_TESTS.some(([words]) => words.test(line)) }).toEqual({ line, found: true });
});
