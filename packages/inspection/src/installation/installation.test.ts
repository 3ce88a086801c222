import type { Path } from "@good-grounds/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { fileOfSchema } from "../../../../outside/files/schema-file.ts";
import { valueAt } from "../issues.ts";
import { parseInspectionData } from "../parse.ts";
import type { InspectionFile } from "../schema/file.ts";
import { resolveInstallation } from "./build.ts";
import type { Installation } from "./model.ts";

interface Leaf {
  readonly kind: "seen" | "measured" | "fact" | "not-known" | "fact-not-known";
  readonly word?: string | boolean;
  readonly detail: { readonly path: Path; readonly text?: string; readonly silence?: string; readonly reason?: string };
}

/** Every leaf of a resolved installation. */
function leavesOf(installation: Installation): Leaf[] {
  const leaves: Leaf[] = [];
  const met = new Set<unknown>([installation.file]);
  const waiting: unknown[] = [installation.supply, installation.boards, installation.things.all];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    if (typeof next !== "object" || next === null || met.has(next)) continue;
    met.add(next);
    if ("kind" in next && "detail" in next) leaves.push(next as Leaf);
    else waiting.push(...Object.values(next).filter((inner) => inner !== undefined));
  }
  return leaves;
}

/** Every place below one where a reading stands, taken or not. */
function readingsIn(file: InspectionFile, path: Path): Path[] {
  const value = valueAt(file, path);
  if (typeof value !== "object" || value === null) return [];
  if ("shown" in value || "notTaken" in value) return [path];
  const steps = Array.isArray(value) ? [...value.keys()] : Object.keys(value);
  return steps.flatMap((step) => readingsIn(file, [...path, step]));
}

/** The nearest statement at or above a place that something is not known. */
function silenceAbove(file: InspectionFile, path: Path): { silence: unknown; reason: unknown } | undefined {
  for (let length = path.length; length > 0; length--) {
    const value = valueAt(file, path.slice(0, length));
    if (typeof value !== "object" || value === null) continue;
    const said = Object.entries(value).find(([name]) => name === "notKnown" || name === "notTaken");
    if (said !== undefined) return { silence: said[1], reason: valueAt(value, ["reason"]) };
  }
  return undefined;
}

describe("a resolved installation", () => {
  test("holds nothing but what the file says at the place each leaf names, whatever the file", () => {
    fc.assert(
      fc.property(fileOfSchema, (file) => {
        for (const { kind, word, detail } of leavesOf(resolveInstallation(file))) {
          const { path, text, silence, reason } = detail;
          const value = valueAt(file, path);
          if (kind === "not-known" || kind === "fact-not-known") {
            const said = silenceAbove(file, path);
            expect({ path, silence, reason }).toEqual({ path, ...(said ?? { silence: "absent", reason: "" }) });
            if (said === undefined) expect(value).toBeUndefined();
          } else if (kind === "fact") {
            // Whether there is an RCD is told by where one stands, not by a word.
            if (path.at(-1) === "fedFrom") expect(value === "supply").toBe(word);
            else if (path.at(-1) === "rcds")
              expect(["none", "one", "several"][Math.min(2, (value as unknown[]).length)]).toBe(word);
            else if (path.at(-1) === "circuits") expect(Array.isArray(value)).toBe(word);
            else if (path.at(-1) === "rcd" || path.at(-2) === "rcds") expect(value === "none").toBe(word === false);
            else expect(String(word)).toBe(String(value));
          } else if (typeof value === "object" && value !== null && "from" in value && "to" in value) {
            expect([`${value.from} to ${value.to}`, `${value.to} to ${value.from}`]).toContain(text);
          } else {
            expect(text).toBe(String(kind === "measured" ? valueAt(value, ["shown"]) : value));
          }
        }
      }),
      { numRuns: 150 },
    );
  });

  test("leaves out no reading of the file", () => {
    fc.assert(
      fc.property(fileOfSchema, (file) => {
        const places = new Set(leavesOf(resolveInstallation(file)).map(({ detail }) => detail.path.join("/")));
        for (const path of readingsIn(file, ["supply"]).concat(readingsIn(file, ["boards"]))) {
          expect(places).toContain(path.join("/"));
        }
      }),
      { numRuns: 100 },
    );
  });

  test("has a leaf for every kind of thing even where the file says nothing", () => {
    // Whence a board is fed and which circuits it has, the least file says.
    const leaves = leavesOf(resolveInstallation(smallestFile())).filter(({ kind }) => kind !== "fact");
    expect(leaves.length).toBeGreaterThan(30);
    expect(new Set(leaves.map(({ kind }) => kind))).toEqual(new Set(["not-known", "fact-not-known"]));
  });

  test("is frozen through and through", () => {
    const installation = resolveInstallation(smallestFile());
    for (const part of [installation, installation.supply, installation.boards[0], installation.circuits]) {
      expect(Object.isFrozen(part)).toBe(true);
    }
  });
});

const resolved = (members: object): Installation => {
  const parsed = parseInspectionData({ ...smallestFile(), ...members });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return resolveInstallation(parsed.file);
};
const METERS = [
  { id: "m", kind: "tester", serial: "1", accuracy: { loop: "±(5 % + 3 digits)" } },
  { id: "n", kind: "tester", serial: "2", accuracy: { loop: "2 %" } },
];
const bandOfZe = (instruments: object[], ze: object) => {
  const { low, high } = resolved({ instruments, supply: { bonding: [], readings: { ze } } }).supply.ze;
  return [low, high];
};

describe("the band of a reading", () => {
  test.each([
    ["comes from the instrument it names", METERS, { shown: "0.20 Ω", with: "m" }, [0.14, 0.24]],
    ["comes from the only instrument of the job", METERS.slice(0, 1), { shown: "0.20 Ω" }, [0.14, 0.24]],
    // ±(5 % + 5 digits), and contacts of 0.02 Ω that only add.
    ["is that of a usual one where several might be meant", METERS, { shown: "0.20 Ω" }, [0.12, 0.26]],
    [
      "is that of a usual one where no accuracy is stated",
      [{ id: "x", kind: "k", serial: "1" }],
      { shown: "0.20 Ω" },
      [0.12, 0.26],
    ],
    ["never reaches below zero", METERS, { shown: "0.01 Ω", with: "m" }, [0, 0.0405]],
    [
      "is open above where the display ended",
      METERS,
      { shown: ">99.9 Ω", with: "n" },
      [97.832, Number.POSITIVE_INFINITY],
    ],
  ])("%s", (_, instruments, ze, [low = 0, high = 0]) => {
    const band = bandOfZe(instruments, ze);
    expect(band[0]).toBeCloseTo(low, 9);
    if (Number.isFinite(high)) expect(band[1]).toBeCloseTo(high, 9);
    else expect(band[1]).toBe(high);
  });

  test("a range that was written backwards is the same range", () => {
    const tails = (size: object) => resolved({ supply: { bonding: [], tails: { size } } }).supply.tails.size;
    expect(tails({ from: "25 mm²", to: "16 mm²" })).toEqual(tails({ from: "16 mm²", to: "25 mm²" }));
    expect(tails({ from: "25 mm²", to: "16 mm²" })).toMatchObject({ low: 16, high: 25, value: 20.5 });
  });
});

describe("what stands before a circuit", () => {
  const own = { own: { residual: "30 mA" } };
  const silent = { notKnown: "limited", reason: "cover not removed" };
  const residual = (rcds: object[], rcd?: unknown) => {
    const circuit = { id: "c", designation: "1", description: "d", ...(rcd === undefined ? {} : { rcd }) };
    const boards = [{ id: "b", name: "B", fedFrom: "supply", rcds, circuits: [circuit] }];
    const { present, devices } = resolved({ boards }).circuits[0]?.residual ?? {};
    return [
      present?.kind === "fact" ? present.word : present?.detail.silence,
      (devices ?? []).map(({ id }) => id ?? "own").join(" "),
    ];
  };
  const main = { id: "main", serves: "whole-board" };
  const some = { id: "some", serves: "listed" };

  test.each([
    ["none on the board, none stated", [], "none", [false, ""]],
    ["none on the board, nothing said", [], undefined, ["absent", ""]],
    ["none on the board, not seen", [], silent, ["limited", ""]],
    ["its own", [], own, [true, "own"]],
    ["one of the board", [some], { board: "some" }, [true, "some"]],
    ["one of the board that serves others", [some], "none", [false, ""]],
    ["one of the board that may serve it or not", [some], undefined, ["absent", ""]],
    ["the main one only", [main], "none", [true, "main"]],
    ["the main one, whatever else", [main], silent, [true, "main"]],
    ["its own and the main one", [main], own, [true, "own main"]],
    ["one of the board and the main one, the nearer first", [main, some], { board: "some" }, [true, "some main"]],
    ["the main one named, told once", [main], { board: "main" }, [true, "main"]],
  ])("%s", (_, rcds, rcd, expected) => {
    expect(residual(rcds, rcd)).toEqual(expected);
  });

  test("a board leads to the circuit that feeds it, in whatever order they stand", () => {
    const feed = { id: "f", designation: "1", description: "feed" };
    const { boards, circuits } = resolved({
      boards: [
        { id: "sub", name: "Sub", fedFrom: { board: "main", circuit: "f" }, circuits: [] },
        { id: "main", name: "Main", fedFrom: "supply", circuits: [feed] },
      ],
    });
    expect(boards[0]?.feeder).toBe(circuits[0]);
    expect(boards[0]?.feeder?.board).toBe(boards[1]);
    expect(boards[1]?.feeder).toBeUndefined();
  });
});
