import { describe, expect, test } from "vitest";
import { deadRcds, type Farm, farmhouse } from "./farmhouse.ts";
import { delayedRcd, type House, rcd, reasonedIn } from "./rcd-house.ts";

/** TT, 91 Ω, a breaker of 32 A, every RCD over 1999 ms with its button dead: a fault lasts as long as nobody looks. */
const NOTHING_OPENS: House = { rcds: { circuit: rcd("30 mA", "dead"), board: delayedRcd("100 mA", "dead") } };
const HIGH_ON_TN = { earthing: "TN-S", rcds: {}, circuit: { readings: { zs: { shown: "1.90 Ω" } } } } as const;

type Facts = Readonly<Record<string, unknown>>;

/** The RCDs in the house board alone, as an inspector finds them: those of the barn work. */
function deadRcdsOfHouse(farm: Farm): void {
  deadRcds({ ...farm, boards: farm.boards.slice(0, 1) });
}

function about(house: House, topic: string, facts: Facts) {
  return reasonedIn({ ...house, observation: { topic, board: "b", circuit: "c", facts } });
}
const BATH = { parts: "earthed-metal", "electric-shower": false };

/** Every subject that speaks of what clears a fault of a circuit, in the best that can be said of all else. */
const SUBJECTS: readonly (readonly [topic: string, facts: Facts])[] = [
  ["bath-rcd-and-bonding", { ...BATH, bonding: true, "main-bonded": true }],
  ["bath-rcd-and-bonding", { ...BATH, bonding: false, "main-bonded": true }],
  ["bath-rcd-and-bonding", { parts: "nothing", "electric-shower": false, bonding: true, "main-bonded": true }],
  ["supplementary-bonding-needed", { "asked-by-place": false, bonded: true }],
  ["supplementary-bonding-needed", { "asked-by-place": false, bonded: false }],
  ["zs-over-limit", { unaccounted: false }],
  ["rcd-none-tt", { "loop-lasts": true }],
  ["rcd-does-not-trip", {}],
  ["fixed-equipment-no-rcd", { place: "dry", "asked-by-maker": false }],
  ["rcd-none-tt", {}],
  ["sockets-no-rcd", {}],
  ["sockets-no-rcd", { "outdoor-use": "unlikely", premises: "elsewhere", "risk-assessment": true }],
  ["lighting-no-rcd", {}],
  ["external-impedance-high", { cause: "network", "metal-live": false }],
];

describe("nothing opens on an earth fault of the circuit: C2, whatever the subject and whatever else is good", () => {
  test.each(SUBJECTS)("%s %j", (topic, facts) => {
    const { reasoning } = about(NOTHING_OPENS, topic, facts);
    expect(reasoning.possible).toEqual(["C2"]);
    expect(reasoning.classification).toBe("C2");
  });

  test("in a farmhouse as its file has it: the bath with its bonding, and never “not a danger now”", () => {
    const observation = { board: "house", circuit: "h1", topic: "bath-rcd-and-bonding" };
    const { one } = farmhouse({ ...observation, facts: { ...BATH, bonding: true, "main-bonded": true } }, deadRcds);
    expect(one.reasoning.classification).toBe("C2");
    expect(one.recorded.find(({ fact }) => fact === "fault-cleared")?.value).toBe("no");
    expect(one.client.C2).toContain("nothing cuts off the power");
    expect(one.client.C3).toBeUndefined();
  });
});

describe("a whole farmhouse whose house board has dead RCDs", () => {
  test.each<[string, Record<string, unknown>]>([
    ["no place named", {}],
    ["its board", { board: "house" }],
    ["a circuit", { board: "house", circuit: "h1" }],
  ])("no RCD on TT, %s: C2, nothing asked", (_, place) => {
    const { one } = farmhouse({ ...place, topic: "rcd-none-tt", facts: {} }, deadRcdsOfHouse);
    expect(one.reasoning.possible).toEqual(["C2"]);
    expect(one.reasoning.next).toBeUndefined();
  });

  test("words by the state: nothing goes off, so nobody is told that it may be slow or not as it should", () => {
    const told = (topic: string, circuit: object) =>
      farmhouse({ board: "house", ...circuit, topic, facts: {} }, deadRcdsOfHouse).one.client.C2;
    expect(told("zs-over-limit", { circuit: "h1" })).toMatch(/nothing cuts off the power/);
    expect(told("sockets-no-rcd", { circuit: "h1" })).toMatch(/nothing cuts off the power/);
    expect(told("rcd-does-not-trip", {})).toMatch(/does not work\..*nothing is sure to cut off the power/);
  });
});

describe("the farmhouse with RCDs that passed their tests", () => {
  test.each<[string, Record<string, unknown>]>([
    ["its board", { board: "house" }],
    ["a circuit", { board: "house", circuit: "h1" }],
  ])("no RCD on TT, %s: what senses a fault is not asked, and nothing is short", (_, place) => {
    const { one } = farmhouse({ ...place, topic: "rcd-none-tt", facts: {} });
    expect(one.reasoning.possible).toEqual(["none"]);
    const known = [...one.recorded, ...one.worked].filter(({ fact }) => fact === "rcd").map(({ value }) => value);
    expect(known).toEqual(["working"]);
  });
});

describe("where something does open", () => {
  const bath = { ...BATH, bonding: true, "main-bonded": true };

  test("RCDs that work: the bath with its bonding is no danger", () => {
    const { reasoning, recorded } = about({ rcds: { circuit: rcd("30 mA", "works") } }, "bath-rcd-and-bonding", bath);
    expect(recorded.find(({ fact }) => fact === "fault-cleared")?.value).not.toBe("no");
    expect(reasoning.possible).not.toContain("C1");
    expect(reasoning.possible).toContain("none");
  });

  test.each<[string, House]>([
    ["an RCD that is slow", { rcds: { circuit: rcd("30 mA", "slow") } }],
    ["a breaker on TN that is late, by 121 A on 32 A", HIGH_ON_TN],
    [
      "a dead RCD with one that works ahead",
      { rcds: { circuit: rcd("30 mA", "dead"), board: delayedRcd("100 mA", "works") } },
    ],
    ["an RCD that was not tested", { rcds: { circuit: rcd("30 mA", "untested") } }],
  ])("%s: it is not said that nothing does", (_, house) => {
    const { recorded, reasoning } = about(house, "bath-rcd-and-bonding", bath);
    expect(recorded.find(({ fact }) => fact === "fault-cleared")?.value).not.toBe("no");
    expect(reasoning.possible).toContain("C3");
  });

  test.each<[string, House]>([
    ["the loop not read", { rcds: { circuit: rcd("30 mA", "dead") }, circuit: { readings: {} } }],
    ["a device of unknown rating", { rcds: { circuit: rcd("30 mA", "dead") }, circuit: { device: {} } }],
  ])("%s: asked, where nothing else tells", (_, house) => {
    const { recorded } = about(house, "fixed-equipment-no-rcd", { place: "dry", "asked-by-maker": false });
    const said = recorded.find(({ fact }) => fact === "fault-cleared")?.value;
    // The loop at the board is a part of it.
    expect(said).toBe(house.circuit?.device === undefined ? "no" : undefined);
  });
});
