import { readdirSync, readFileSync } from "node:fs";
import { COMPUTATIONS } from "@good-grounds/computations";
import * as tables from "@good-grounds/tables";
import { TOPICS } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";

/**
 * Titles, series and numbers of publishers' booklets, and forums with their threads. A figure names the standard's own
 * table or regulation, or says in plain words what kind of source it was seen in.
 */
const TOO_CLOSE = [
  /guidance notes?\b/i,
  /\bGN ?\d/,
  /on-?site guide/i,
  /best practice guide/i,
  /pocket guide/i,
  /electrician.s guide/i,
  /guide to the wiring regulations/i,
  /\bmagazine\b/i,
  /handbook,? (?:table|appendix|page) \w*\d/i,
  /\bforums?\b/i,
  /\b(?:Q&A|community|discussion) threads?\b|\bthreads? (?:on|about)\b/i,
];
/** Within a label of a source a page or the year of an issue is as close as a title. */
const IN_LABELS = [...TOO_CLOSE, /\bpage \d|\bp\. ?\d|(?:spring|summer|autumn|winter) \d{4}|\bthreads?\b/i];

/** This test, which has to name what it looks for. */
const OWN = "source-labels.test.ts";
const ROOT = new URL("../../", import.meta.url);
const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === "object" && value !== null;

/** Every text of a label of a source that can be reached from a value. */
function* labelsIn(value: unknown, seen = new Set<unknown>()): Generator<string> {
  if (!isRecord(value) || seen.has(value)) return;
  seen.add(value);
  if (typeof value.work === "string" && "basis" in value)
    for (const text of [value.work, value.edition, value.formula, value.doubt])
      if (typeof text === "string") yield text;
  if (typeof value.source === "string") yield value.source;
  const inside = value instanceof Map ? value.values() : Object.values(value);
  for (const one of inside) yield* labelsIn(one, seen);
}

const close = (labels: Iterable<string>, patterns: readonly RegExp[]) => [
  ...new Set([...labels].filter((label) => patterns.some((pattern) => pattern.test(label)))),
];

describe("labels of sources", () => {
  test.each([
    ["tables", [...labelsIn(tables)]],
    ["topics", [...labelsIn(TOPICS)]],
    ["computations", [...COMPUTATIONS.values()].flatMap((one) => [...labelsIn(one)])],
  ])("%s: none names a booklet, its series or page, a forum or a thread", (_, labels) => {
    expect(labels.length).toBeGreaterThan(50);
    expect(close(labels, IN_LABELS)).toEqual([]);
  });

  test("nor does any text of the project", () => {
    const folders = ["packages", "apps", "docs", "examples", "outside", "bench"];
    const pages = ["README.md", "ARCHITECTURE.md", "CONTRIBUTING.md", "CHANGELOG.md"].map(
      (name) => new URL(name, ROOT),
    );
    const files = folders.flatMap((folder) =>
      readdirSync(new URL(`${folder}/`, ROOT), { recursive: true, withFileTypes: true })
        .filter(
          ({ parentPath, name }) =>
            /\.(?:tsx?|md|json)$/.test(name) && !/node_modules|[\\/](?:dist|out)(?:[\\/]|$)/.test(parentPath),
        )
        .filter((one) => one.isFile() && one.name !== OWN)
        .map((one) => new URL(`file://${one.parentPath}/${one.name}`)),
    );
    const found = [...files, ...pages].flatMap((file) =>
      readFileSync(file, "utf8")
        .split("\n")
        .filter((line) => TOO_CLOSE.some((pattern) => pattern.test(line)))
        .map((line) => `${file.pathname.slice(ROOT.pathname.length)}: ${line.trim().slice(0, 120)}`),
    );
    expect(files.length).toBeGreaterThan(500);
    expect(found).toEqual([]);
  });
});
