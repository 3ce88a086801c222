import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";

const PACKAGES = new URL("../../packages/", import.meta.url);

/** Sources of every package but those that hold the file, print it, or put together what is printed. */
const JUDGING = /^(?!inspection|report|assembly|core|tables)[a-z-]+\/src\/.*\.ts$/;

/**
 * The one place that reads what was typed instead of the evidence: a look at one's own figures asks how readings were
 * written down, digit by digit and second by second.
 */
const READS_WHAT_WAS_TYPED = ["own-figures/own-figures.ts"];

/** Ways to get at the file behind an installation. */
const BEHIND = [/\binstallation\.file\b/, /\bfile\b[^}]*\}: (?:Pick<)?(?:Dated|Whole)?Installation\b/, /\{ file \} = /];

describe("what judges", () => {
  test("reads the evidence of an installation and never the file behind it", () => {
    const sources = readdirSync(PACKAGES, { recursive: true, encoding: "utf8" })
      .map((name) => name.replaceAll("\\", "/"))
      .filter((name) => JUDGING.test(name) && !name.endsWith(".test.ts"));
    expect(sources.length).toBeGreaterThan(200);
    const found = sources.filter((name) => {
      const text = readFileSync(new URL(name, PACKAGES), "utf8");
      return BEHIND.some((form) => form.test(text));
    });
    expect(found.map((name) => name.replace(/^.*?\/src\//, ""))).toEqual(READS_WHAT_WAS_TYPED);
  });
});
