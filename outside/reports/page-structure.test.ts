import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import { parseInspection } from "@good-grounds/inspection";
import { reportHtml } from "@good-grounds/report/pdf/document";
import { describe, expect, test } from "vitest";

function pageOf(name: string): string {
  const parsed = parseInspection(readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8"));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return reportHtml(assemble(parsed.file, true));
}

describe.each(["terraced-house", "farmhouse", "workshop"])("the report of the %s as a page", (name) => {
  const page = pageOf(name);

  test("has one of each landmark, and a way past the first", () => {
    for (const landmark of ["<main ", "<nav ", "<header ", "<footer "])
      expect([landmark, page.split(landmark).length - 1]).toEqual([landmark, 1]);
    expect(page).toMatch(/<a class="skip" href="#said">[^<]+<\/a>/);
    expect(page).toContain('id="said"');
    expect(page).toContain('<html lang="en-GB">');
  });

  test("has one first heading and leaves no level out", () => {
    const levels = [...page.matchAll(/<h([1-6])[ >]/g)].map(([, level]) => Number(level));
    expect(levels.filter((level) => level === 1)).toHaveLength(1);
    expect(levels[0]).toBe(1);
    const jumps = levels.filter((level, i) => level > (levels[i - 1] ?? 0) + 1);
    expect(jumps).toEqual([]);
  });

  test("has a name and column headers on every table", () => {
    const tables = [...page.matchAll(/<table.*?<\/table>/gs)].map(([table]) => table);
    expect(tables.length).toBeGreaterThan(5);
    for (const table of tables) expect(table).toMatch(/<thead><tr>(?:<th scope="col"[^>]*>.*?<\/th>)+<\/tr><\/thead>/s);
    const regions = [...page.matchAll(/role="region" tabindex="0" aria-label="([^"]*)"/g)].map(([, label]) => label);
    expect(regions).toHaveLength(tables.length);
    expect(regions).not.toContain("");
  });

  test("has words for every drawing", () => {
    const drawings = [...page.matchAll(/<svg [^>]*>/g)].map(([open]) => open);
    expect(drawings.length).toBeGreaterThan(5);
    for (const open of drawings) expect(open).toMatch(/role="img" aria-label="[^"]+"/);
    for (const [image] of page.matchAll(/<img[^>]*>/g)) expect(image).toMatch(/alt="[^"]+"/);
  });
});
