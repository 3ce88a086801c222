import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arbitraryFile, smallestFile } from "../../../checks/files/arbitrary-file.ts";
import { MIGRATIONS } from "./migrations/index.ts";
import { LARGEST, parseInspection, parseInspectionData } from "./parse.ts";
import { printInspection } from "./print.ts";
import { VERSION } from "./schema/file.ts";

const codes = (data: unknown) => {
  const parsed = parseInspectionData(data);
  return parsed.ok ? [] : parsed.issues.map(({ code, path }) => `${code} ${path.join("/")}`);
};
const withChange = (change: (file: Record<string, object>) => void) => {
  const file = structuredClone(smallestFile()) as unknown as Record<string, object>;
  change(file);
  return codes(file);
};

describe("parse and print", () => {
  test("reading what was printed gives the same file, whatever the file", () => {
    fc.assert(
      fc.property(arbitraryFile, (file) => {
        const parsed = parseInspection(printInspection(file));
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
        expect(parsed.file).toEqual(file);
        const again = parseInspection(printInspection(parsed.file));
        if (!again.ok) throw new Error("refused its own print");
        expect(printInspection(again.file)).toBe(printInspection(parsed.file));
      }),
      { numRuns: 150 },
    );
  });
});

describe("what is wrong is said, all of it and where", () => {
  test("a unit of another kind, a missing unit, a wrong word and an unknown member at once", () => {
    const found = withChange((file) => {
      Object.assign(file.supply as object, { nominalVoltage: "230 A", earthing: "TNS", colour: "red" });
      Object.assign(file.brief as object, { nation: "france" });
    });
    expect(found).toEqual(
      expect.arrayContaining([
        "unit-mismatch supply/nominalVoltage",
        "not-in-list supply/earthing",
        "unknown-member supply/colour",
        "not-in-list brief/nation",
      ]),
    );
  });

  test("duplicate ids, references that lead nowhere, boards that feed each other", () => {
    const board = (id: string, from: string) => ({
      id,
      name: id,
      fedFrom: { board: from, circuit: "x" },
      circuits: [{ id: "x", designation: "1", description: "feed" }],
    });
    const found = withChange((file) => {
      Object.assign(file, {
        boards: [board("a", "b"), board("b", "a"), board("b", "nowhere")],
        signatures: [{ person: "ghost", capacity: "inspected-and-tested", at: "2026-10-01T10:00:00Z" }],
      });
    });
    expect(found).toEqual(
      expect.arrayContaining([
        "duplicate-id boards/2",
        "unknown-reference boards/2/fedFrom/board",
        "boards-in-a-circle boards/0/fedFrom",
        "unknown-reference signatures/0/person",
      ]),
    );
  });

  test("an instrument or person named by a reading has to exist", () => {
    const found = withChange((file) => {
      Object.assign(file.supply as object, { readings: { ze: { shown: "0.21 Ω", with: "meter-x", by: "nobody" } } });
    });
    expect(found.sort()).toEqual([
      "unknown-reference supply/readings/ze/by",
      "unknown-reference supply/readings/ze/with",
    ]);
  });

  test("a file written by a newer program is refused with that reason alone", () => {
    expect(codes({ format: "good-grounds-inspection", version: VERSION + 1, anything: true })).toEqual([
      "too-new version",
    ]);
  });

  test.each([
    ["no version", { format: "good-grounds-inspection" }, "no-version version"],
    ["another kind of document", { format: "letter" }, "not-an-inspection format"],
    ["a list", [], "not-an-inspection "],
    ["nothing", null, "not-an-inspection "],
  ])("%s", (_, data, expected) => {
    expect(codes(data)).toEqual([expected]);
  });

  test("each message names what was found and what to do", () => {
    const parsed = parseInspectionData({ ...smallestFile(), edition: "2015" });
    if (parsed.ok) throw new Error("accepted");
    expect(parsed.issues).toEqual([
      {
        code: "not-in-list",
        path: ["edition"],
        found: '"2015"',
        expected: "one of 2018+A2+A3, 2018+A4",
        advice: "write one of 2018+A2+A3, 2018+A4",
      },
    ]);
  });
});

describe("hostile text", () => {
  test.each([
    ["nothing", ""],
    ["broken", '{"format": "good-grounds-inspection", '],
    ["NaN", '{"format": NaN}'],
    ["deep", "[".repeat(200_000)],
    ["deep and closed", `${"[".repeat(50_000)}${"]".repeat(50_000)}`],
    [
      "deep inside",
      `{"format":"good-grounds-inspection","version":2,"supply":${'{"a":'.repeat(20_000)}1${"}".repeat(20_000)}}`,
    ],
    [
      "prototype",
      '{"format":"good-grounds-inspection","version":2,"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}',
    ],
    ["big number", '{"format":"good-grounds-inspection","version":1e308}'],
    ["lone surrogate", '{"format":"good-grounds-inspection","version":2,"id":"\\ud800"}'],
  ])("%s gives issues and nothing else", (_, text) => {
    const parsed = parseInspection(text);
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) expect(parsed.issues.length).toBeGreaterThan(0);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test("a text far too long is refused without being read", () => {
    const parsed = parseInspection(" ".repeat(LARGEST + 1));
    expect(parsed).toMatchObject({ ok: false, issues: [{ code: "too-large" }] });
  });

  test("the number of issues is bounded, and the rest is counted", () => {
    const file = { ...smallestFile(), limitations: Array.from({ length: 200 }, () => ({ a: 1, b: 2, c: 3 })) };
    const parsed = parseInspectionData(file);
    if (parsed.ok) throw new Error("accepted");
    expect(parsed.issues.length).toBe(501);
    expect(parsed.issues.at(-1)?.code).toBe("more-issues");
  });

  test("mutations of a sound file never throw, and everything refused has a place", () => {
    const nasty = fc.constantFrom<unknown>(
      null,
      "",
      "0.21",
      "NaN Ω",
      "1e308 Ω",
      "-1 Ω",
      -1,
      1e308,
      [],
      {},
      true,
      "\u0000",
      "🙂".repeat(50),
      { notKnown: "limited" },
    );
    const text = printInspection(smallestFile());
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.nat(), nasty), { minLength: 1, maxLength: 4 }), (changes) => {
        const data = JSON.parse(text);
        for (const [at, value] of changes) {
          const places: [Record<string, unknown>, string][] = [];
          const walk = (node: unknown): void => {
            if (typeof node !== "object" || node === null) return;
            for (const key of Object.keys(node)) {
              places.push([node as Record<string, unknown>, key]);
              walk((node as Record<string, unknown>)[key]);
            }
          };
          walk(data);
          const [holder, key] = places[at % places.length] as [Record<string, unknown>, string];
          // A value of its own each time, or a later change would reach into an earlier one.
          holder[key] = structuredClone(value);
        }
        const parsed = parseInspectionData(data);
        if (!parsed.ok)
          for (const issue of parsed.issues)
            expect(issue.expected.length * issue.advice.length * issue.found.length).toBeGreaterThan(0);
      }),
      { numRuns: 500 },
    );
  });
});

describe("migrations", () => {
  /** A document of each older version, as it was written then, with what it has to become. */
  const fixtures: Readonly<Record<number, { before: Record<string, unknown>; after: Record<string, unknown> }>> = {
    1: {
      before: (() => {
        const { inspectedOn, visits: _visits, ...rest } = smallestFile();
        return { ...rest, version: 1, visitedOn: inspectedOn };
      })(),
      after: { ...smallestFile(), version: 2 },
    },
  };

  test("lead from 1 to today without a gap", () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 1));
    expect(MIGRATIONS.map(({ to }) => to)).toEqual(Array.from({ length: VERSION - 1 }, (_, i) => i + 2));
  });

  test.each(MIGRATIONS.map((migration) => [migration.from, migration] as const))(
    "from version %i is exercised by a document of its time",
    (from, migration) => {
      const fixture = fixtures[from];
      if (fixture === undefined) throw new Error(`no fixture of version ${from}: add one`);
      const frozen = structuredClone(fixture.before);
      expect(migration.up(fixture.before)).toEqual({ ...fixture.after, version: migration.to });
      expect(fixture.before).toEqual(frozen);
      const parsed = parseInspectionData(fixture.before);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
      expect(parsed.migrated).toContain(migration.what);
      expect(parsed.file).toEqual(smallestFile());
    },
  );
});
