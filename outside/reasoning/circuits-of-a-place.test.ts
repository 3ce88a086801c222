import { parseInspectionData, resolveInstallation } from "@good-grounds/inspection";
import { reasonObservations, weigh } from "@good-grounds/judgement";
import { describe, expect, test } from "vitest";
import { smallestFile } from "../files/arbitrary-file.ts";
import { delayedRcd, type RcdState, rcd } from "./rcd-house.ts";

type Rcd = ReturnType<typeof rcd> | ReturnType<typeof delayedRcd>;

/** A circuit of the barn: what it supplies, its RCD or none, and whether it has socket-outlets. */
function circuit(id: string, load: string, own: Rcd | undefined, more: Record<string, unknown> = {}) {
  const device = { standard: "BS EN 60898", type: "B", rated: "32 A" };
  const of = own === undefined ? "none" : { own };
  return { id, designation: id, description: load, shape: "radial", load, device, rcd: of, ...more };
}

const SOCKETS = circuit("s", "socket-outlets", rcd("30 mA", "works"));
const LARGE = circuit("l", "socket-outlets", rcd("100 mA", "works"), {
  device: { standard: "BS EN 60898", type: "C", rated: "63 A" },
});
const LIGHTS = circuit("a", "lighting", delayedRcd("300 mA", "works"), { socketOutlets: false });
const SOUND = [SOCKETS, LARGE, LIGHTS];

/** The observation of a farm building whose board has these circuits; of the board where nothing else is named. */
function farm(circuits: readonly unknown[], facts: Record<string, unknown> = {}, place: object = { board: "b" }) {
  const parsed = parseInspectionData({
    ...smallestFile(),
    people: [{ id: "inspector", name: "An inspector" }],
    boards: [{ id: "b", name: "Barn", fedFrom: "supply", rcds: [], circuits }],
    observations: [{ id: "x", place: "barn", what: "something", topic: "farm-protection", facts, ...place }],
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.issues));
  const installation = resolveInstallation(parsed.file);
  const [one] = reasonObservations(installation, weigh(installation));
  if (one === undefined) throw new Error("not reasoned about");
  return one;
}

const recorded = ({ recorded }: ReturnType<typeof farm>) =>
  Object.fromEntries(recorded.map(({ fact, value }) => [fact, value]));
const against = (one: ReturnType<typeof farm>) =>
  one.against.map(({ fact, value, stated, of = [] }) => [fact, value, stated, of.map((at) => at.join("/"))]);

describe("RCDs of all circuits of a board", () => {
  test("all of the rating asked, and all work: yes, with the board as ground", () => {
    const one = farm(SOUND);
    expect(recorded(one)).toEqual({ "rcd-socket": "yes", "rcd-fire": "yes" });
    expect(one.recorded.map(({ of }) => of)).toEqual([[["boards", 0]], [["boards", 0]]]);
    expect(one.reasoning.grounds.get("rcd-fire")).toMatchObject({ kind: "fact" });
    expect(one.reasoning.open).not.toContain("rcd-socket");
  });

  test.each<[string, Rcd | undefined]>([
    ["none", undefined],
    ["one of 100 mA", rcd("100 mA", "works")],
    ["one that is slow", rcd("30 mA", "slow")],
    ["one that is dead", rcd("30 mA", "dead")],
    ["a delayed one", delayedRcd("30 mA", "works")],
  ])("one circuit of sockets up to 32 A has %s: no, with that circuit as ground", (_, own) => {
    const one = farm([LARGE, circuit("x", "socket-outlets", own), SOCKETS, LIGHTS]);
    expect(recorded(one)["rcd-socket"]).toBe("no");
    expect(one.recorded.find(({ fact }) => fact === "rcd-socket")?.of).toEqual([["boards", 0, "circuits", 1]]);
    expect(recorded(one)["rcd-fire"]).toBe("yes");
  });

  test.each<[string, Rcd | undefined, string]>([
    ["none", undefined, "no"],
    ["one of 500 mA", rcd("500 mA", "works"), "no"],
    ["one of 300 mA that is dead", rcd("300 mA", "dead"), "no"],
    ["one of 30 mA", rcd("30 mA", "works"), "yes"],
  ])("lights behind %s: %s against fire", (_, own, value) => {
    const one = farm([SOCKETS, circuit("x", "lighting", own, { socketOutlets: false })]);
    expect(recorded(one)).toEqual({ "rcd-socket": "yes", "rcd-fire": value });
  });

  test.each<RcdState>(["untested", "limited", "button dead, no time"])("an RCD %s leaves it open", (state) => {
    expect(recorded(farm([...SOUND, circuit("x", "socket-outlets", rcd("30 mA", state))]))).toEqual({
      "rcd-fire": "yes",
    });
    expect(recorded(farm([...SOUND, circuit("x", "motor", rcd("300 mA", state), { socketOutlets: false })]))).toEqual({
      "rcd-socket": "yes",
    });
  });

  test("one circuit that is known to lack it goes before one of which nothing is known", () => {
    const untested = circuit("u", "socket-outlets", rcd("30 mA", "untested"));
    expect(recorded(farm([untested, circuit("x", "socket-outlets", undefined), LIGHTS]))["rcd-socket"]).toBe("no");
  });

  test.each([
    ["nobody recorded whether it has sockets", circuit("x", "cooker", undefined)],
    ["what it supplies was not recorded", { ...circuit("x", "lighting", undefined), load: undefined }],
  ])("without an RCD, and %s: neither is answered", (_, one) => {
    expect(recorded(farm([...SOUND, one]))).toEqual({});
  });

  test("of sockets whose device is not recorded, 100 mA leaves open which are asked", () => {
    const unread = circuit("x", "socket-outlets", rcd("100 mA", "works"), { device: undefined });
    expect(recorded(farm([...SOUND, unread]))["rcd-socket"]).toBeUndefined();
  });

  test("a circuit that feeds a board and is behind nothing leaves the rest open: what it feeds may have its own", () => {
    const feed = circuit("f", "board", undefined, { shape: "distribution" });
    expect(recorded(farm([...SOUND, feed]))).toEqual({ "rcd-socket": "yes" });
  });

  test("no circuit of the kind answers nothing", () => {
    expect(recorded(farm([SOCKETS]))).toEqual({ "rcd-socket": "yes" });
    expect(recorded(farm([]))).toEqual({});
  });
});

describe("a statement against the record", () => {
  test("sockets said to be behind RCDs, one circuit without: to settle, and never nothing", () => {
    const said = { "rcd-socket": true, "rcd-fire": true, livestock: false, damage: "sound" };
    const one = farm([...SOUND, circuit("x", "socket-outlets", undefined)], said);
    expect(against(one)).toEqual([["rcd-socket", "no", "yes", ["boards/0/circuits/3"]]]);
    expect(one.reasoning.possible).toContain("C2");
    expect(one.reasoning.ending).not.toBe("settled");
  });

  test("said to lack what the record shows: to settle", () => {
    expect(against(farm(SOUND, { "rcd-fire": false }))).toEqual([["rcd-fire", "yes", "no", ["boards/0"]]]);
  });
});

describe("where the observation is made", () => {
  const bad = [...SOUND, circuit("x", "socket-outlets", undefined)];
  test("of one circuit, only what it lacks answers: it says nothing of the others", () => {
    expect(recorded(farm(SOUND, {}, { board: "b", circuit: "s" }))).toEqual({});
    expect(recorded(farm(bad, {}, { board: "b", circuit: "x" }))).toEqual({ "rcd-socket": "no" });
    expect(recorded(farm(bad, {}, { board: "b", circuit: "s" }))).toEqual({});
  });
  test("of the whole installation, only that all have it: a circuit without may be of another building", () => {
    expect(recorded(farm(SOUND, {}, {}))).toEqual({ "rcd-socket": "yes", "rcd-fire": "yes" });
    expect(recorded(farm(bad, {}, {}))).toEqual({ "rcd-fire": "yes" });
  });
});
