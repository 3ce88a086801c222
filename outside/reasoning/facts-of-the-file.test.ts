import { describe, expect, test } from "vitest";
import { deadRcds, type Farm, farmhouse } from "./farmhouse.ts";

type Edit = (farm: Farm) => void;
type Reasoned = ReturnType<typeof farmhouse>["one"];

const recorded = ({ recorded: all }: Reasoned) => Object.fromEntries(all.map(({ fact, value }) => [fact, value]));

describe("what stands before the first RCD on an electrode is answered by the file", () => {
  const at = (board: string | undefined, edit: Edit = () => {}) =>
    farmhouse({ topic: "tt-unprotected-length", facts: {}, ...(board === undefined ? {} : { board }) }, edit).one;
  const house =
    (change: Record<string, unknown>): Edit =>
    ({ boards: [one] }) =>
      Object.assign(one ?? {}, change);
  /** The feed to the barn with an RCD of its own, and none before the whole of the house board. */
  const ofBarn =
    (rcd: unknown, change: Record<string, unknown> = {}): Edit =>
    ({ boards: [one] }) => {
      for (const circuit of one?.circuits ?? []) if (circuit.id === "h6") circuit.rcd = rcd;
      Object.assign(one ?? {}, { rcds: one?.rcds.filter(({ id }) => id === "sockets"), ...change });
    };
  const DELAYED = { own: { standard: "BS EN 61008", type: "A", delay: "S", residual: "100 mA" } };
  const AT_ONCE = { own: { standard: "BS EN 61008", type: "A", delay: "general", residual: "100 mA" } };

  test.each([["house"], [undefined]])("the metal board with its delayed RCD, spoken of as %s", (board) => {
    const one = at(board);
    expect(recorded(one)).toEqual({ "earthing-system": "tt", board: "metal-guarded | metal", upstream: "no" });
    expect(one.reasoning.open).not.toContain("upstream");
  });

  test("an insulating board", () => {
    expect(recorded(at("house", house({ enclosure: "combustible" })))).toMatchObject({
      board: "insulating",
      upstream: "no",
    });
  });

  test("of what is not told by the material it is asked", () => {
    expect(recorded(at("house", house({ enclosure: "non-combustible" }))).board).toBeUndefined();
    expect(recorded(at("house", house({ enclosure: undefined }))).board).toBeUndefined();
  });

  test.each<[string, Edit, string | undefined]>([
    ["a delayed one in an insulating board ahead", ofBarn(DELAYED, { enclosure: "combustible" }), "yes"],
    ["a delayed one in a metal board ahead", ofBarn(DELAYED), "no"],
    ["one without delay ahead", ofBarn(AT_ONCE, { enclosure: "combustible" }), "no"],
    ["a board ahead of which nobody wrote what it is of", ofBarn(DELAYED, { enclosure: undefined }), undefined],
    ["nobody looked for one ahead", ofBarn(undefined), undefined],
    ["no RCD ahead", ofBarn("none"), "no"],
  ])("the barn, %s: %s", (_, edit, upstream) => {
    expect(recorded(at("barn", edit)).upstream).toBe(upstream);
  });
});

describe("whether faults are disconnected on every circuit is answered by the file", () => {
  const about = (edit: Edit) => farmhouse({ topic: "external-impedance-high", facts: {} }, edit).one;
  /** Every circuit with its Zs; on TT an RCD before each. */
  const allRead: Edit = ({ boards }) => {
    for (const { circuits } of boards) for (const { readings } of circuits) readings.zs = { shown: "91 Ω" };
  };

  test("all of them: yes, with how many, and it is not asked", () => {
    const one = about(allRead);
    expect(recorded(one).disconnects).toBe("yes");
    expect(one.recorded.find(({ fact }) => fact === "disconnects")?.words).toMatch(/all 11 circuits/);
    expect(one.reasoning.open).not.toContain("disconnects");
  });
  test("one of them not: no, and which", () => {
    const one = about((farm) => {
      allRead(farm);
      deadRcds(farm);
    });
    expect(recorded(one).disconnects).toBe("no");
    expect(one.recorded.find(({ fact }) => fact === "disconnects")?.words).toMatch(/not on /);
  });
  test("one of them not measured, or the list of circuits not complete: it is asked", () => {
    const missing = about((farm) => {
      allRead(farm);
      for (const circuit of farm.boards[0]?.circuits ?? []) if (circuit.id === "h4") delete circuit.readings.zs;
    });
    expect(recorded(missing).disconnects).toBeUndefined();
  });
  test("said otherwise: to settle", () => {
    const { against } = farmhouse({ topic: "external-impedance-high", facts: { disconnects: false } }, allRead).one;
    expect(against.map(({ fact, value }) => [fact, value])).toEqual([["disconnects", "yes"]]);
  });
});
