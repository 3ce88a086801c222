import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { arbitraryFile, smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { fileOfSchema } from "../../../outside/files/schema-file.ts";
import { MIGRATIONS } from "./migrations/index.ts";
import { LARGEST, parseInspection, parseInspectionData } from "./parse.ts";
import { printInspection } from "./print.ts";
import { VERSION } from "./schema/version.ts";

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
  test.each([
    ["with plausible readings", arbitraryFile, 150],
    ["with every member of the published schema", fileOfSchema, 300],
  ])("reading what was printed gives the same file: files %s", (_, files, numRuns) => {
    fc.assert(
      fc.property(files, (file) => {
        const parsed = parseInspection(printInspection(file));
        if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
        expect(parsed.file).toEqual(file);
        const again = parseInspection(printInspection(parsed.file));
        if (!again.ok) throw new Error("refused its own print");
        expect(printInspection(again.file)).toBe(printInspection(parsed.file));
      }),
      { numRuns },
    );
  });

  test("equal files print to equal bytes, whatever the order their members were written in", () => {
    const backwards = (value: unknown): unknown => {
      if (Array.isArray(value)) return value.map(backwards);
      if (typeof value !== "object" || value === null) return value;
      return Object.fromEntries(
        Object.entries(value)
          .reverse()
          .map(([name, inner]) => [name, backwards(inner)]),
      );
    };
    // Facts, positions and accuracies go by names; their order is kept as it came, so they are left out.
    const printed = (data: unknown) => {
      const parsed = parseInspectionData(data);
      if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues.slice(0, 5)));
      return printInspection(parsed.file);
    };
    fc.assert(
      fc.property(fileOfSchema, (file) => {
        const own = {
          ...file,
          instruments: file.instruments.map(({ accuracy: _, ...rest }) => rest),
          observations: file.observations.map(({ facts: _, positions: __, ...rest }) => rest),
        };
        expect(printed(backwards(own))).toBe(printed(own));
      }),
      { numRuns: 100 },
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

describe("nothing is dropped silently", () => {
  const text = printInspection({
    ...smallestFile(),
    instruments: [{ id: "m", kind: "tester", serial: "1", accuracy: { loop: "2 %" } }],
    observations: [{ id: "o", place: "p", what: "w", facts: { damp: true } }],
  });
  const codesOf = (changed: string) => {
    const parsed = parseInspection(changed);
    return parsed.ok ? [] : parsed.issues.map(({ code, path }) => `${code} ${path.join("/")}`);
  };

  test("the text itself is sound", () => {
    expect(codesOf(text)).toEqual([]);
  });

  test.each([
    ["a second id", '"id": "first", "id": "small"', ["repeated-member id"]],
    ["a second id in disguise", '"id": "first", "\\u0069d": "small"', ["repeated-member id"]],
    [
      "both a second id and an unknown member",
      '"id": "a", "colour": 1, "id": "small"',
      ["repeated-member id", "unknown-member colour"],
    ],
    ["a prototype", '"__proto__": {"title": "t"}, "id": "small"', ["unknown-member __proto__"]],
    ["a constructor", '"constructor": {"prototype": {}}, "id": "small"', ["unknown-member constructor"]],
  ])("%s is told", (_, member, expected) => {
    expect(codesOf(text.replace('"id": "small"', member))).toEqual(expected);
  });

  test.each([
    ["facts", '"damp": true', '"damp": true, "__proto__": {"polluted": true}', "observations/0/facts"],
    ["accuracies", '"loop": "2 %"', '"loop": "2 %", "__proto__": "5 %"', "instruments/0/accuracy"],
  ])("a prototype among %s is told", (_, member, changed, place) => {
    const issues = codesOf(text.replace(member, changed));
    expect(issues).toContain(`${issues[0]?.split(" ")[0]} ${place}/__proto__`);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });

  test("names every object has are facts like any other", () => {
    const parsed = parseInspection(text.replace('"damp": true', '"constructor": true, "toString": "yes"'));
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
    expect(JSON.stringify(parsed.file.observations[0]?.facts)).toBe('{"constructor":true,"toString":"yes"}');
  });
});

describe("hostile text", () => {
  const whole = printInspection(smallestFile());
  const deep = `${'{"a":'.repeat(100_000)}1${"}".repeat(100_000)}`;
  test.each([
    ["deep below a reading", '"bonding": []', `"bonding": [], "readings": {"ze": ${deep}}`],
    ["deep in a list", '"people": []', `"people": [${deep}]`],
    ["deep in a list of lists", '"people": []', `"people": ${"[".repeat(100_000)}${"]".repeat(100_000)}`],
    ["deep where forms are tried", '"fedFrom": "supply"', `"fedFrom": ${deep}`],
    [
      "deep among facts",
      '"observations": []',
      `"observations": [{"id":"o","place":"p","what":"w","facts":{"a":${deep}}}]`,
    ],
    ["deep in an unknown member", '"id": "small"', `"id": "small", "more": ${deep}`],
    ["deep under a prototype", '"id": "small"', `"id": "small", "__proto__": ${deep}`],
    ["half a character", '"id": "small"', '"id": "small", "title": "\\ud83d"'],
    [
      "a number beyond all numbers",
      '"sampling": []',
      '"sampling": [{"what":"w","population":1e999,"inspected":0,"defective":0}]',
    ],
    [
      "a number nearly beyond",
      '"sampling": []',
      '"sampling": [{"what":"w","population":1e308,"inspected":0,"defective":0}]',
    ],
    ["less than nothing", '"sampling": []', '"sampling": [{"what":"w","population":5,"inspected":-1,"defective":-2}]'],
  ])("%s, in an otherwise sound file, gives issues and nothing else", (_, member, changed) => {
    expect(whole).toContain(member);
    const parsed = parseInspection(whole.replace(member, () => changed));
    expect(parsed.ok).toBe(false);
    if (!parsed.ok) for (const { path } of parsed.issues) expect(path.length).toBeGreaterThan(0);
  });

  test.each([
    ["nothing", ""],
    ["broken", '{"format": "good-grounds-inspection", '],
    ["NaN", '{"format": NaN}'],
    ["deep", "[".repeat(200_000)],
    ["deep and closed", `${"[".repeat(100_000)}${"]".repeat(100_000)}`],
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

  test("very many members of no known name are counted, not listed", () => {
    const members = Object.fromEntries(Array.from({ length: 20_000 }, (_, i) => [`k${i}`, 1]));
    const parsed = parseInspectionData({ ...smallestFile(), ...members, id: "of a wrong form" });
    if (parsed.ok) throw new Error("accepted");
    const found = parsed.issues.map((issue) => issue.found);
    expect(found).toContain('"of a wrong form"');
    expect(found.length).toBe(501);
    expect(found.at(-1)).toBe("2 more");
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
    2: { before: { ...smallestFile(), version: 2 }, after: { ...smallestFile(), version: 3 } },
  };

  test.each(["inspectedOn", "visits"] as const)(
    "a document of version 1 that has %s of version 2 keeps what it has, and is refused for it",
    (member) => {
      const { inspectedOn: _, visits: __, ...rest } = smallestFile();
      const found = codes({ ...rest, [member]: smallestFile()[member], version: 1, visitedOn: "2020-01-01" });
      expect(found).toContain("unknown-member visitedOn");
      expect(found).toContain(`missing ${member === "visits" ? "inspectedOn" : "visits"}`);
    },
  );

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
