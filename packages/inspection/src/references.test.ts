import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../outside/files/arbitrary-file.ts";
import { referenceIssues } from "./references.ts";
import type { InspectionFile } from "./schema/file.ts";

type Board = InspectionFile["boards"][number];

const issuesOf = (members: Partial<InspectionFile>) =>
  referenceIssues({ ...smallestFile(), ...members }).map(({ code, path }) => `${code} ${path.join("/")}`);
const board = (id: string, fedFrom: Board["fedFrom"], ...circuits: string[]): Board => ({
  id,
  name: id,
  fedFrom,
  circuits: circuits.map((one) => ({ id: one, designation: one, description: one })),
});
const from = (id: string): Board["fedFrom"] => ({ board: id, circuit: "x" });
const HASH = "0".repeat(64);

describe("ids", () => {
  const twice = <T>(row: T) => [row, row];

  test("are wanted once among their kind, each kind by itself", () => {
    const same = "one";
    expect(
      issuesOf({
        people: twice({ id: same, name: "n" }),
        instruments: twice({ id: same, kind: "k", serial: "s" }),
        observations: twice({ id: same, place: "p", what: "w" }),
        limitations: twice({ id: same, kind: "agreed" as const, what: "w", why: "y" }),
        photographs: twice({ sha256: HASH, name: "n", description: "d" }),
        supply: {
          bonding: twice({ id: same, to: "water" as const }),
          otherSources: twice({ id: same, kind: "battery" as const }),
        },
        boards: [{ ...board(same, "supply", "x", "x"), rcds: twice({ id: same, serves: "listed" as const }) }],
      }),
    ).toEqual([
      "duplicate-id people/1",
      "duplicate-id instruments/1",
      "duplicate-id observations/1",
      "duplicate-id limitations/1",
      "duplicate-id supply/bonding/1",
      "duplicate-id supply/otherSources/1",
      "duplicate-id photographs/1",
      "duplicate-id boards/0/circuits/1",
      "duplicate-id boards/0/rcds/1",
    ]);
  });

  test("may be the same on different boards", () => {
    expect(issuesOf({ boards: [board("a", "supply", "1"), board("b", "supply", "1")] })).toEqual([]);
  });

  test("a name every object has is an id like any other", () => {
    const people = [{ id: "constructor", name: "n" }];
    expect(issuesOf({ people, signatures: [signed("constructor")] })).toEqual([]);
    expect(issuesOf({ people, signatures: [signed("toString")] })).toEqual(["unknown-reference signatures/0/person"]);
  });
});

const signed = (person: string) => ({ person, capacity: "inspected-and-tested" as const, at: "2026-10-20T10:00:00Z" });

describe("references", () => {
  test("that lead nowhere are all told, in the order of the file", () => {
    const nowhere = { shown: "0.21 Ω", by: "nobody", with: "nothing" };
    expect(
      issuesOf({
        conditions: { conductorTemperature: { ...nowhere, shown: "9 °C" } },
        supply: { bonding: [{ id: "w", to: "water", resistance: nowhere }], readings: { ze: nowhere } },
        boards: [
          {
            ...board("a", "supply"),
            rcds: [{ id: "main", serves: "listed", readings: { atRated: { ...nowhere, shown: "20 ms" } } }],
            circuits: [
              {
                id: "1",
                designation: "1",
                description: "d",
                rcd: { board: "other" },
                readings: { crossLineCpc: [{ point: "p", reading: nowhere }] },
              },
            ],
          },
          board("b", { board: "a", circuit: "2" }),
        ],
        inspected: [{ item: "intake.meter", outcome: "observed", observations: ["o", "lost"] }],
        observations: [
          {
            id: "o",
            board: "a",
            circuit: "9",
            place: "p",
            what: "w",
            photographs: [HASH],
            choice: { classification: "C3", reason: "r", by: "ghost" },
          },
        ],
        signatures: [signed("ghost")],
      }),
    ).toEqual([
      "unknown-reference boards/0/circuits/0/rcd/board",
      "unknown-reference boards/1/fedFrom/circuit",
      "unknown-reference inspected/0/observations/1",
      "unknown-reference observations/0/circuit",
      "unknown-reference observations/0/choice/by",
      "unknown-reference observations/0/photographs/0",
      "unknown-reference signatures/0/person",
      "unknown-reference conditions/conductorTemperature/by",
      "unknown-reference conditions/conductorTemperature/with",
      "unknown-reference supply/bonding/0/resistance/by",
      "unknown-reference supply/bonding/0/resistance/with",
      "unknown-reference supply/readings/ze/by",
      "unknown-reference supply/readings/ze/with",
      "unknown-reference boards/0/circuits/0/readings/crossLineCpc/0/reading/by",
      "unknown-reference boards/0/circuits/0/readings/crossLineCpc/0/reading/with",
      "unknown-reference boards/0/rcds/0/readings/atRated/by",
      "unknown-reference boards/0/rcds/0/readings/atRated/with",
    ]);
  });

  test("of steps for safety lead to people", () => {
    const by = (person: string) => ({ at: "2026-10-20T10:00:00Z", by: person });
    expect(
      issuesOf({
        people: [{ id: "known", name: "n" }],
        precautions: [
          { step: "covers.dead", outcome: "done", ...by("known") },
          { step: "covers.locked", outcome: "done", ...by("ghost") },
        ],
        earthingOff: [{ off: by("known"), on: by("ghost") }, { off: by("ghost") }],
        boards: [
          {
            ...board("a", "supply"),
            circuits: [
              {
                id: "1",
                designation: "1",
                description: "d",
                liveBeforeContinuity: { reason: "r", ...by("ghost") },
              },
            ],
          },
        ],
      }),
    ).toEqual([
      "unknown-reference precautions/1/by",
      "unknown-reference earthingOff/0/on/by",
      "unknown-reference earthingOff/1/off/by",
      "unknown-reference boards/0/circuits/0/liveBeforeContinuity/by",
    ]);
  });

  test("name what there is to choose from", () => {
    const people = Array.from({ length: 12 }, (_, i) => ({ id: `p${i}`, name: "n" }));
    const advice = (file: Partial<InspectionFile>) => referenceIssues({ ...smallestFile(), ...file })[0]?.advice;
    expect(advice({ people, signatures: [signed("ghost")] })).toBe("known: p0, p1, p2, p3, p4, p5, p6, p7");
    expect(advice({ signatures: [signed("ghost")] })).toBe("no person is recorded; add it or remove this reference");
  });

  test("an RCD of another board serves no circuit of this one", () => {
    const rcds = [{ id: "main", serves: "listed" as const }];
    const circuit = { id: "1", designation: "1", description: "d", rcd: { board: "main" } };
    expect(issuesOf({ boards: [{ ...board("a", "supply"), rcds, circuits: [circuit] }] })).toEqual([]);
    expect(
      issuesOf({
        boards: [
          { ...board("a", "supply"), rcds },
          { ...board("b", "supply"), circuits: [circuit] },
        ],
      }),
    ).toEqual(["unknown-reference boards/1/circuits/0/rcd/board"]);
  });

  test("a circuit is named with its board", () => {
    expect(issuesOf({ observations: [{ id: "o", place: "p", what: "w", circuit: "1" }] })).toEqual([
      "circuit-without-board observations/0/circuit",
    ]);
  });
});

describe("feeding", () => {
  test("from the supply through boards, in whatever order they stand, is sound", () => {
    expect(
      issuesOf({ boards: [board("c", from("b")), board("b", from("a"), "x"), board("a", "supply", "x")] }),
    ).toEqual([]);
  });

  test.each([
    ["a board that feeds itself", [board("a", from("a"), "x")], ["boards/0"]],
    ["two that feed each other", [board("a", from("b"), "x"), board("b", from("a"), "x")], ["boards/0"]],
    [
      "a circle with boards hanging from it, told once",
      [board("d", from("c"), "x"), board("a", from("b"), "x"), board("b", from("c"), "x"), board("c", from("a"), "x")],
      ["boards/0"],
    ],
    [
      "two circles",
      [board("a", from("a"), "x"), board("s", "supply", "x"), board("b", from("c"), "x"), board("c", from("b"), "x")],
      ["boards/0", "boards/2"],
    ],
  ])("in a circle: %s", (_, boards, places) => {
    expect(issuesOf({ boards })).toEqual(places.map((place) => `boards-in-a-circle ${place}/fedFrom`));
  });

  test("a chain of 200 boards is followed without trouble", () => {
    const boards = Array.from({ length: 200 }, (_, i) => board(`b${i}`, i === 0 ? "supply" : from(`b${i - 1}`), "x"));
    expect(issuesOf({ boards: boards.reverse() })).toEqual([]);
  });
});
