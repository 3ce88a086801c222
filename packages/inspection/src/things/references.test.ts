import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { parseInspectionData } from "../parse.ts";

function issuesOf(members: object): string[] {
  const parsed = parseInspectionData({ ...smallestFile(), ...members });
  return parsed.ok ? [] : parsed.issues.map(({ code, path }) => `${code} ${path.join("/")}`);
}

const board = (id: string, ...circuits: string[]) => ({
  id,
  name: id,
  fedFrom: "supply",
  circuits: circuits.map((one) => ({ id: one, designation: one, description: one })),
  rcds: [{ id: "main", serves: "listed" }],
});
const BOARDS = [board("a", "c1"), board("b", "c2")];
const observation = (more: object) => ({ id: "o", place: "p", what: "w", ...more });

describe("things", () => {
  test("have an id that no other thing has, whatever its kind and whether it is listed or brought in", () => {
    expect(
      issuesOf({
        things: { places: [{ id: "x" }], loads: [{ id: "x" }] },
        observations: [observation({ brings: { joints: [{ id: "x" }] } })],
      }),
    ).toEqual(["duplicate-id things/loads/0", "duplicate-id observations/0/brings/joints/0"]);
  });

  test("name boards, circuits of their board, places, sections and enclosures that are there", () => {
    expect(
      issuesOf({
        boards: BOARDS,
        things: {
          places: [{ id: "hall" }],
          sections: [{ id: "s", board: "a", circuit: "c1" }],
          enclosures: [{ id: "box", place: "hall" }],
          joints: [{ id: "j", between: ["s"], enclosure: "box" }],
          arcDevices: [{ id: "arc", board: "b", feeds: ["c2"] }],
        },
      }),
    ).toEqual([]);
    expect(
      issuesOf({
        boards: BOARDS,
        things: {
          sections: [
            { id: "s", board: "a", circuit: "c2" },
            { id: "t", circuit: "c1" },
            { id: "u", board: "none", place: "nowhere" },
          ],
          joints: [{ id: "j", between: ["s", "arc"], enclosure: "s" }],
          arcDevices: [{ id: "arc", board: "b", feeds: ["c1"] }],
        },
      }).sort(),
    ).toEqual(
      [
        "unknown-reference things/sections/0/circuit",
        "circuit-without-board things/sections/1/circuit",
        "unknown-reference things/sections/2/board",
        "unknown-reference things/sections/2/place",
        "unknown-reference things/joints/0/between/1",
        "unknown-reference things/joints/0/enclosure",
        "unknown-reference things/arcDevices/0/feeds/0",
      ].sort(),
    );
  });

  test("are measured with instruments and by people that are there, also what an observation brings in", () => {
    const resistance = { shown: "20 Ω", by: "nobody", with: "nothing" };
    expect(
      issuesOf({
        things: { electrodes: [{ id: "e", resistance }] },
        observations: [observation({ brings: { electrodes: [{ id: "f", resistance }] } })],
      }).sort(),
    ).toEqual([
      "unknown-reference observations/0/brings/electrodes/0/resistance/by",
      "unknown-reference observations/0/brings/electrodes/0/resistance/with",
      "unknown-reference things/electrodes/0/resistance/by",
      "unknown-reference things/electrodes/0/resistance/with",
    ]);
  });
});

describe("the things an observation speaks of", () => {
  const file = (spoken: object[], more: object = {}) =>
    issuesOf({
      boards: BOARDS,
      supply: { bonding: [{ id: "water", to: "water" }] },
      things: { places: [{ id: "hall" }] },
      observations: [observation({ things: spoken, ...more })],
    });

  test("are things of the file, bonding conductors, and RCDs of the board named or its own", () => {
    expect(file([{ thing: "hall" }, { thing: "water", quantity: 2 }, { thing: "main", board: "b" }])).toEqual([]);
    expect(file([{ thing: "main" }], { board: "a" })).toEqual([]);
    expect(file([{ thing: "lid" }], { brings: { enclosures: [{ id: "lid" }] } })).toEqual([]);
  });

  test("that are not there, or might be two, are told at their place", () => {
    expect(file([{ thing: "hall" }, { thing: "main" }])).toEqual(["unknown-reference observations/0/things/1/thing"]);
    expect(file([{ thing: "main", board: "none" }])).toEqual([
      "unknown-reference observations/0/things/0/board",
      "unknown-reference observations/0/things/0/thing",
    ]);
    expect(file([{ thing: "water" }], { brings: { loads: [{ id: "water" }] } })).toEqual([
      "two-things observations/0/things/0/thing",
    ]);
  });
});
