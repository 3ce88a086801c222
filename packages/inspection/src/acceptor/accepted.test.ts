import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as z from "zod";
import { Chance } from "../../../../examples/simulate/chance.ts";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { fileOfSchema } from "../../../../outside/files/schema-file.ts";
import { casesOfRun, seedOfRun } from "../../../../outside/seed.ts";
import { bySchema } from "../by-schema.ts";
import { parseInspection } from "../parse.ts";
import { printInspection } from "../print.ts";
import { inspectionFile } from "../schema/file.ts";
import { accepted } from "./accepted.ts";
import { acceptorOf } from "./written-out.ts";

const EXAMPLES = ["terraced-house", "farmhouse", "workshop"].map((name) =>
  readFileSync(new URL(`../../../../examples/${name}.json`, import.meta.url), "utf8"),
);

/** Files with every member of the schema somewhere, in the order of the schema, each short enough to be read very often. */
const BASES = [smallestFile(), ...fc.sample(fileOfSchema, { numRuns: 60, seed: seedOfRun() })]
  .map((file) => JSON.stringify(bySchema(file).file))
  .filter((text) => text.length < 30_000);

/** Values that stand where something else was: nearly right, far from it, or right by chance. */
const STRANGE: readonly unknown[] = [
  null,
  "",
  "0.21",
  "0.21 Ω",
  ">999 MΩ",
  "-1 °C",
  "1e308 Ω",
  "2026-02-30",
  "2026-02-28",
  "2026-10-20T10:45:00+01:00",
  "±(5 % + 3 digits)",
  "🙂".repeat(140),
  "x".repeat(301),
  "two\nlines",
  "\ud83d",
  -1,
  0,
  1,
  1.5,
  1e308,
  true,
  [],
  ["a"],
  {},
  { notKnown: "limited", reason: "locked" },
  { notTaken: "limited", reason: "locked" },
  { shown: "0.21 Ω" },
  { from: "1 Ω", to: "2 Ω" },
];

type Holder = Record<string, unknown>;

/** Every place of a document, as what holds it and the name it has there. */
function placesOf(document: unknown): readonly (readonly [Holder, string])[] {
  const places: (readonly [Holder, string])[] = [];
  const walk = (value: unknown) => {
    if (typeof value !== "object" || value === null) return;
    for (const name of Object.keys(value)) {
      places.push([value as Holder, name]);
      walk((value as Holder)[name]);
    }
  };
  walk(document);
  return places;
}

/** One place is replaced, left out, written twice as a list, named otherwise, or put last. */
function changed(document: unknown, chance: Chance): void {
  const places = placesOf(document);
  const at = Math.floor(chance.uniform() * places.length);
  const [holder, name] = places[at] ?? [{}, ""];
  const value = holder[name];
  const strange = () => structuredClone(STRANGE[Math.floor(chance.uniform() * STRANGE.length)]);
  const kind = Math.floor(chance.uniform() * 6);
  if (kind === 0) delete holder[name];
  else if (kind === 1) holder[chance.uniform() < 0.5 ? "more" : "note"] = strange();
  else if (kind === 2 && Array.isArray(value)) value.push(...structuredClone(value));
  else if (kind === 3) {
    delete holder[name];
    holder[name] = value;
  } else if (kind === 4) {
    const other = places[Math.floor(chance.uniform() * places.length)];
    holder[name] = structuredClone(other?.[0][other[1]]);
  } else holder[name] = strange();
}

describe("what plainly fits", () => {
  test("the committed module is what the schema says", () => {
    const committed = readFileSync(new URL("accepted.ts", import.meta.url), "utf8");
    expect(acceptorOf(inspectionFile) === committed, "run `npm run acceptor`").toBe(true);
  });

  test.each(EXAMPLES)("an example is accepted, and is the same as through the schema", (text) => {
    expect(accepted(JSON.parse(text))).toBeGreaterThan(500);
    expect(bySchema(JSON.parse(text)).file).toEqual(JSON.parse(text));
  });

  test("exactly what the schema takes, of very many changed files", () => {
    const chance = new Chance(seedOfRun());
    let [taken, refused] = [0, 0];
    for (let i = 0; i < casesOfRun(500); i++) {
      const base = BASES[i % BASES.length] ?? "";
      const document: unknown = JSON.parse(base);
      changed(document, chance);
      if (chance.uniform() < 0.3) changed(document, chance);
      const text = JSON.stringify(document);
      const read = bySchema(JSON.parse(text));
      const fits = read.file !== undefined && read.issues.length === 0;
      // What stands in another order is put in order by the schema, and not accepted here.
      const inOrder = fits && JSON.stringify(read.file) === text;
      if (accepted(document) >= 0 !== inOrder)
        throw new Error(`accepted ${accepted(document)}, by the schema ${inOrder}: change ${i}`);
      if (inOrder) taken++;
      else refused++;
    }
    expect(Math.min(taken, refused)).toBeGreaterThan(50);
  });

  test("a line of signs that are long in the machine and few to the reader is left to the schema, which takes it", () => {
    const file = JSON.stringify({ ...smallestFile(), title: "🙂".repeat(200) });
    expect(accepted(JSON.parse(file))).toBe(-1);
    const parsed = parseInspection(file);
    expect(parsed.ok && parsed.file.title).toBe("🙂".repeat(200));
  });

  test("a file in another order is read, and is the same in print", () => {
    const [text = ""] = EXAMPLES;
    const { id, ...rest } = JSON.parse(text);
    const other = JSON.stringify({ ...rest, id });
    expect(accepted(JSON.parse(other))).toBe(-1);
    const [first, second] = [parseInspection(text), parseInspection(other)];
    if (!first.ok || !second.ok) throw new Error("refused");
    expect(printInspection(second.file)).toBe(printInspection(first.file));
  });

  test("a name that stands twice is told, wherever it stands and however it is written", () => {
    for (const text of EXAMPLES) {
      const twice = text.replace(/"shown"/, () => '"sh\\u006fwn": "1 Ω", "shown"');
      const parsed = parseInspection(twice);
      expect(parsed.ok ? [] : parsed.issues.map(({ code }) => code)).toContain("repeated-member");
    }
  });
});

describe("code is made of nothing it does not know", () => {
  test.each([
    ["a rule of our own without a name", z.strictObject({ a: z.string().superRefine(() => {}) })],
    ["members that are let pass", z.object({ a: z.string() })],
    ["a number with a fraction", z.strictObject({ a: z.number() })],
    ["a limit that is left out itself", z.strictObject({ a: z.int().gt(1) })],
    ["a length of more than one", z.strictObject({ a: z.string().min(2) })],
    ["a value that is changed", z.strictObject({ a: z.string().transform((text) => text.length) })],
    ["a value that is filled in", z.strictObject({ a: z.string().default("a") })],
    ["a value with a trimmed text", z.strictObject({ a: z.string().trim() })],
    ["every word of a record", z.strictObject({ a: z.record(z.enum(["b", "c"]), z.string()) })],
  ])("%s is refused where the code is made", (_, schema) => {
    expect(() => acceptorOf(schema)).toThrow(/no code is made|not named|refuses members|whole/);
  });
});
