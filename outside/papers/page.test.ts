import { htmlOf } from "@good-grounds/report/document";
import { PAPER_KINDS, paperOf } from "@good-grounds/report/papers";
import { describe, expect, test } from "vitest";
import { dataOf, EXAMPLES, inputOf } from "./jobs.ts";

/** What stands between each of these tags, with its attributes. */
const all = (html: string, tag: string) =>
  [...html.matchAll(new RegExp(`<${tag}[ >][^<]*`, "g"))].map(([found]) => found);

describe("the page of a paper, for who does not see it", () => {
  test.each(EXAMPLES.flatMap((name) => PAPER_KINDS.map((kind) => [name, kind] as const)))("%s, %s", (name, kind) => {
    const html = htmlOf(paperOf(kind, inputOf(dataOf(name))));
    // Each table is found by a name of its own.
    const regions = [...html.matchAll(/role="region"[^>]*aria-label="([^"]*)"/g)].map(([, label]) => label);
    expect(new Set(regions).size).toBe(regions.length);
    // No heading of a row or column is empty.
    expect(html).not.toMatch(/<th[^>]*><\/th>/);
    expect(all(html, "h1")).toHaveLength(1);
    // Levels of headings are not skipped.
    const levels = [...html.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    for (const [i, level] of levels.entries()) expect(level - (levels[i - 1] ?? 0)).toBeLessThanOrEqual(1);
    expect(html).not.toMatch(/<script|javascript:|https?:\/\/(?!www\.w3\.org)/);
  });
});
