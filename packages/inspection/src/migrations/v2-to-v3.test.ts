import { describe, expect, test } from "vitest";
import { smallestFile } from "../../../../outside/files/arbitrary-file.ts";
import { parseInspectionData } from "../parse.ts";
import { contentHashes } from "../signed.ts";
import { asVersion2 } from "./as-version-2.ts";
import { v2ToV3 } from "./v2-to-v3.ts";

const board = (id: string, more: object = {}) => ({ id, name: id, fedFrom: "supply", ...more, circuits: [] });
const old = (...boards: object[]) => ({ ...smallestFile(), version: 2, boards });

function opened(document: unknown) {
  const parsed = parseInspectionData(document);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  return parsed.file;
}

describe("surge protection as version 2 had it", () => {
  test("becomes a device of its board: fitted, not fitted, or not known with the reason", () => {
    const locked = { notKnown: "limited", reason: "locked" };
    const file = opened(
      old(
        board("a", { surgeProtection: "fitted" }),
        board("b"),
        board("c", { surgeProtection: "not-fitted" }),
        board("d", { surgeProtection: locked }),
      ),
    );
    expect(file.things).toEqual({
      surgeDevices: [
        { id: "surge-1", board: "a", fitted: true },
        { id: "surge-3", board: "c", fitted: false },
        { id: "surge-4", board: "d", fitted: locked },
      ],
    });
    expect(file.boards.map((one) => Object.hasOwn(one, "surgeProtection"))).toEqual([false, false, false, false]);
  });

  test("joins things that are there already, as a job carried on over both versions has them", () => {
    const things = { surgeDevices: [{ id: "mine", board: "b" }], places: [{ id: "hall" }] };
    const file = opened({ ...old(board("a", { surgeProtection: "fitted" }), board("b")), things });
    expect(file.things).toEqual({
      places: [{ id: "hall" }],
      surgeDevices: [
        { id: "mine", board: "b" },
        { id: "surge-1", board: "a", fitted: true },
      ],
    });
  });

  test("that is no statement at all is told at its place, and a damaged list is left to the schema", () => {
    const parsed = parseInspectionData(old(board("a", { surgeProtection: "perhaps" })));
    expect(parsed.ok ? [] : parsed.issues.map(({ path }) => path.join("/"))).toContain("things/surgeDevices/0/fitted");
    expect(v2ToV3.up({ version: 2, boards: "none" })).toEqual({ version: 3, boards: "none" });
    expect(v2ToV3.up({ version: 2, boards: [null, 3] })).toEqual({ version: 3, boards: [null, 3] });
  });
});

describe("a file in the words of version 2", () => {
  const document = old(
    board("a", { surgeProtection: "fitted" }),
    board("b"),
    board("c", { phases: 1, surgeProtection: "not-fitted" }),
  );

  test("is what it was before it was opened, member by member", () => {
    expect(JSON.stringify(asVersion2(opened(document)))).toBe(JSON.stringify(document));
  });

  test.each([
    [
      "another state of the device",
      (file: Draft) => Object.assign(file.things.surgeDevices[0] as object, { type: "2" }),
    ],
    ["another id of the device", (file: Draft) => Object.assign(file.things.surgeDevices[0] as object, { id: "x" })],
    [
      "another board of the device",
      (file: Draft) => Object.assign(file.things.surgeDevices[0] as object, { board: "b" }),
    ],
    ["another order", (file: Draft) => file.things.surgeDevices.reverse()],
    ["another thing", (file: Draft) => Object.assign(file.things, { places: [{ id: "hall" }] })],
    ["an empty list of things", (file: Draft) => Object.assign(file, { things: {} })],
    ["a bond's condition", (file: Draft) => file.supply.bonding.push({ id: "w", to: "water", condition: "sound" })],
    ["an RCD's direction", (file: Draft) => Object.assign(file.boards[0] as object, { rcds: [RCD] })],
    ["what an observation speaks of", (file: Draft) => file.observations.push(OBSERVED)],
  ])("does not exist where it says more: %s", (_, change) => {
    const file = structuredClone(opened(document)) as unknown as Draft;
    change(file);
    expect(asVersion2(opened(file))).toBeUndefined();
    expect(contentHashes(opened(file))).toHaveLength(2);
  });
});

interface Draft {
  things: { surgeDevices: object[] };
  supply: { bonding: object[] };
  boards: object[];
  observations: object[];
}
const RCD = { id: "r", serves: "listed", direction: "one-way" };
const OBSERVED = { id: "o", place: "p", what: "w", things: [{ thing: "surge-1" }] };
