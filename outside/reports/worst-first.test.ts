import { readFileSync } from "node:fs";
import { assemble } from "@good-grounds/assembly";
import { parseInspection } from "@good-grounds/inspection";
import { type ReportInput, renderWeighing } from "@good-grounds/report";
import { reportHtml } from "@good-grounds/report/pdf/document";
import { describe, expect, test } from "vitest";
import { weighingJson } from "../../apps/cli/src/json.ts";
import { changed } from "./example.ts";

const exampleText = (name: string) => readFileSync(new URL(`../../examples/${name}.json`, import.meta.url), "utf8");

function input(text: string): ReportInput {
  const parsed = parseInspection(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return assemble(parsed.file);
}

interface Listed {
  readonly check: string;
  readonly place: string;
  readonly verdict: string;
}

function inJson(one: ReportInput): readonly Listed[] {
  return (weighingJson(one, false) as { readonly worstFirst: readonly Listed[] }).worstFirst;
}

/** Titles of the checks that need attention, in the order of the terminal; a device that is named stays out. */
function inTerminal(one: ReportInput): readonly string[] {
  return [
    ...renderWeighing(one, { width: 300, misfits: false }).matchAll(/^ {2}(?:NOT MET|too near|not known) +(.+)$/gm),
  ]
    .map(([, title = ""]) => title)
    .map(bare);
}

function inReport(one: ReportInput): readonly string[] {
  const section = reportHtml(one).split(">What the calculations say, worst first</h2>")[1]?.split("<h2")[0] ?? "";
  return [...section.matchAll(/<h4[^>]*>(.+?): (?:not met|too near to call|not known)/g)].map(([, title = ""]) =>
    bare(title),
  );
}

/** A title without the thing it is named with. */
function bare(title: string): string {
  return title.replace(/ \([^()]*\)$/, "").replaceAll("&amp;", "&");
}

function titles(one: ReportInput): readonly string[] {
  return inJson(one).map(({ check }) => bare(one.checks.find(({ id }) => id === check)?.title ?? check));
}

/** The terraced house with a fault that stands too long by a little on one circuit and with bonding far too thin. */
const LITTLE_OVER = changed((file) => {
  const [board] = file.boards as { circuits: { readings: Record<string, unknown> }[] }[];
  const lights = board?.circuits[5];
  if (lights === undefined) throw new Error("the example has a sixth circuit");
  lights.readings.zs = { ...(lights.readings.zs as object), shown: "9.9 Ω" };
});

describe("worst first", () => {
  test.each(["terraced-house", "farmhouse", "workshop"])(
    "is one order in terminal, report and JSON: %s",
    (name) => {
      const one = input(exampleText(name));
      const listed = titles(one);
      expect(listed.length).toBeGreaterThan(5);
      expect(inTerminal(one)).toEqual(listed);
      expect(inReport(one)).toEqual(listed);
    },
    60_000,
  );

  test("puts a fault that is not cleared before what is further beyond its limit", () => {
    const one = input(LITTLE_OVER);
    const [first] = inJson(one);
    expect(first).toEqual({ check: "maximum-zs", place: "/boards/0/circuits/5", verdict: "not-met" });
    expect(inTerminal(one)).toEqual(titles(one));
    expect(inReport(one)).toEqual(titles(one));
  });
});
