import type { Fact } from "@good-grounds/core";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { THING_KIND_IDS, THING_KINDS } from "../fields/things/index.ts";
import { parseInspectionData } from "../parse.ts";
import { resolveInstallation } from "./build.ts";
import { spokenOf } from "./spoken-of.ts";

function resolved(members: object) {
  const parsed = parseInspectionData({ ...smallestFile(), ...members });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return resolveInstallation(parsed.file);
}

const CIRCUIT = { id: "c", designation: "1", description: "sockets" };
const BOARDS = [{ id: "b", name: "Board", fedFrom: "supply", circuits: [CIRCUIT] }];
const wordOf = (fact: Fact<string | boolean>) => (fact.kind === "fact" ? fact.word : fact.kind);

describe("things", () => {
  test.each(THING_KIND_IDS)("of which nothing but the id was recorded are known in nothing: %s", (kind) => {
    const installation = resolved({ things: { [kind]: [{ id: "one" }] } });
    const [thing, ...others] = installation.things.ofKind(kind);
    expect(others).toEqual([]);
    expect(thing).toMatchObject({ id: "one", kind, path: ["things", kind, 0], quantity: 1 });
    const leaves = Object.values(thing?.state ?? {}).flat();
    expect(Object.keys(thing?.state ?? {}).sort()).toEqual(Object.keys(THING_KINDS[kind].fields).sort());
    for (const leaf of leaves)
      expect(leaf).toMatchObject({ kind: expect.stringMatching(/not-known$/), detail: { silence: "absent" } });
  });

  test("carry what was seen, measured, counted, and why something is not known", () => {
    const { things } = resolved({
      things: {
        enclosures: [
          {
            id: "e",
            covering: "basic-sound",
            screws: 2,
            screwsMade: 6,
            hinges: false,
            keyHolder: { notKnown: "limited", reason: "nobody knew" },
            wear: ["heat", "rodents"],
            height: "2.4 m",
            openings: [{ shape: "round", width: "20 mm" }],
          },
        ],
        electrodes: [{ id: "rod", resistance: { shown: "64 Ω" }, season: "dry" }],
      },
    });
    const [enclosure] = things.ofKind("enclosures");
    const state = enclosure?.state;
    expect(state?.covering).toMatchObject({
      word: "basic-sound",
      detail: { path: ["things", "enclosures", 0, "covering"] },
    });
    expect([state?.screws.value, state?.screwsMade.value, state?.height.value]).toEqual([2, 6, 2.4]);
    expect(state?.hinges).toMatchObject({ word: false });
    expect(state?.keyHolder).toMatchObject({
      kind: "fact-not-known",
      detail: { silence: "limited", reason: "nobody knew" },
    });
    expect(state?.wear.map(wordOf)).toEqual(["heat", "rodents"]);
    expect(enclosure?.openings[0]?.width).toMatchObject({ value: 0.02 });
    expect(enclosure?.openings[0]?.depth.kind).toBe("not-known");
    const [rod] = things.ofKind("electrodes");
    expect(rod?.state.resistance).toMatchObject({ kind: "measured", value: 64 });
  });

  test("are found by id, by board, by circuit, by place, and at the origin", () => {
    const { things } = resolved({
      boards: BOARDS,
      things: {
        places: [{ id: "hall" }],
        sections: [
          { id: "s1", board: "b", circuit: "c" },
          { id: "s2", board: "b" },
          { id: "s3", place: "hall" },
        ],
        joints: [{ id: "j", board: "b", circuit: "c", between: ["s1", "s2"] }],
      },
    });
    const ids = (where: object) => things.at("sections", where).map(({ id }) => id);
    expect(ids({ board: "b" })).toEqual(["s1", "s2"]);
    expect(ids({ board: "b", circuit: "c" })).toEqual(["s1"]);
    expect(ids({ place: "hall" })).toEqual(["s3"]);
    expect(ids({})).toEqual(["s3"]);
    expect(things.byId("j")?.links).toEqual({ between: ["s1", "s2"] });
    expect(things.byId("nothing")).toBeUndefined();
  });

  test("that an observation brings in are there beside the listed ones, with its id", () => {
    const { things } = resolved({
      things: { enclosures: [{ id: "listed" }] },
      observations: [
        {
          id: "o1",
          place: "hall",
          what: "lid loose",
          things: [{ thing: "lid", quantity: 3 }],
          brings: { enclosures: [{ id: "lid", kind: "box", firmness: "loose-or-hanging" }] },
        },
      ],
    });
    expect(things.ofKind("enclosures").map(({ id, broughtBy }) => [id, broughtBy])).toEqual([
      ["listed", undefined],
      ["lid", "o1"],
    ]);
    expect(things.byId("lid")).toMatchObject({
      path: ["observations", 0, "brings", "enclosures", 0],
      state: { firmness: { word: "loose-or-hanging" } },
    });
  });

  test("that an observation speaks of are found, listed or brought in, bonds and RCDs of its board too", () => {
    const rcds = [{ id: "main", serves: "listed" }];
    const installation = resolved({
      boards: [{ ...BOARDS[0], rcds }],
      supply: { bonding: [{ id: "water", to: "water" }] },
      things: { loads: [{ id: "oven" }] },
      observations: [
        {
          id: "o",
          board: "b",
          place: "kitchen",
          what: "w",
          things: [{ thing: "lid", quantity: 4 }, { thing: "main" }, { thing: "water" }, { thing: "oven" }],
          brings: { enclosures: [{ id: "lid" }] },
        },
      ],
    });
    const [observation] = installation.observations;
    if (observation === undefined) throw new Error("no observation");
    expect(spokenOf(observation, installation)).toEqual([
      { kind: "thing", thing: installation.things.byId("lid"), quantity: 4 },
      { kind: "rcd", rcd: installation.boards[0]?.rcds[0], quantity: 1 },
      { kind: "bond", bond: installation.supply.bonding[0], quantity: 1 },
      { kind: "thing", thing: installation.things.byId("oven"), quantity: 1 },
    ]);
  });

  test("of bonding: a service that is not there, and a part that was measured not to be extraneous", () => {
    const { supply } = resolved({
      supply: {
        bonding: [
          { id: "oil", to: "oil", service: "no-such-service" },
          { id: "frame", to: "other", extraneous: false, partResistance: { shown: ">999 MΩ" } },
          { id: "water", to: "water", condition: "browned" },
        ],
      },
    });
    const [oil, frame, water] = supply.bonding;
    expect(oil?.service).toMatchObject({ word: "no-such-service" });
    expect(frame?.partResistance).toMatchObject({ kind: "measured", value: 999e6 });
    expect(water?.condition).toMatchObject({ word: "browned" });
    expect(water?.service.kind).toBe("fact-not-known");
  });

  test("of an RCD: that it cannot be tested and why, and from which side it is fed", () => {
    const rcd = {
      id: "r",
      serves: "listed",
      direction: "one-way",
      backfed: true,
      testability: "cannot-be-tested",
      whyNotTested: "life support behind it",
    };
    const [device] = resolved({ boards: [{ ...BOARDS[0], rcds: [rcd] }] }).boards[0]?.rcds ?? [];
    expect(device).toMatchObject({
      direction: { word: "one-way" },
      backfed: { word: true },
      testability: { word: "cannot-be-tested" },
      whyNotTested: "life support behind it",
    });
  });
});
