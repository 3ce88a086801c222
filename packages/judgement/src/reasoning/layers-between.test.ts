import { topicById } from "@good-grounds/topics";
import { describe, expect, test } from "vitest";
import { reasonAbout } from "./reason-about.ts";

function between(facts: Readonly<Record<string, string>>, positions: Readonly<Record<string, string>> = {}) {
  const topic = topicById("basic-protection");
  if (topic === undefined) throw new Error("no topic basic-protection");
  return reasonAbout({ topic, said: facts, positions }).between;
}

const states = (given: ReturnType<typeof between>) => given?.layers.map(({ name, state }) => [name, state]);

describe("layers between live metal and a person", () => {
  test("every layer, where what they come to is open", () => {
    const found = between({ "live-covering": "basic-sound", wears: "knocks" });
    expect(found?.state).toBe("not-known");
    expect(states(found)).toEqual([
      ["the covering of the live part", "one-event"],
      ["what is around it", "not-known"],
      ["distance or an obstacle", "not-known"],
      ["a lock on the place", "not-known"],
    ]);
  });

  test("only what is known, where it is settled", () => {
    const found = between({ "live-covering": "double-or-reinforced" });
    expect(found?.state).toBe("holds");
    expect(states(found)).toEqual([["the covering of the live part", "holds"]]);
  });

  test("none where nothing live shows, and nobody can touch any", () => {
    const topic = topicById("outdoor-luminaire-damaged");
    if (topic === undefined) throw new Error("no topic outdoor-luminaire-damaged");
    const drawn = (light: string) => reasonAbout({ topic, said: { light } }).between;
    expect(drawn("whole")).toBeUndefined();
    expect(drawn("showing")).toBeDefined();
  });

  test("why several layers come to one is said, and only then", () => {
    const door = {
      "gets-in": "nothing",
      "cover-fixing": "whole",
      "hinges-carry": "yes",
      "cover-opens": "hand",
      "allowed-opening": "no",
      "barrier-behind": "no",
      "arms-reach": "within",
      obstacle: "none",
      "who-comes": "named-keeper",
    };
    const tails = between({ ...door, "live-covering": "basic-sound", wears: "moved" });
    expect(tails?.state).toBe("one-event");
    expect(tails?.because).toBe("what acts on the insulation gets past what is around it");
    expect(between({ ...door, "live-covering": "bare" })?.because).toBe(
      "whoever gets to the place also opens what is around it",
    );
    expect(between({ ...door, "live-covering": "basic-damaged", "wet-or-conductive": "no" })?.because).toContain(
      "begun to fail",
    );
    expect(between({ ...door, "live-covering": "basic-sound", wears: "nothing" })?.because).toBe("");
    expect(between({ ...door, "live-covering": "bare", "who-comes": "anyone" })?.because).toBe("");
  });

  test("bars behind a rail: gone, and one layer left where obstacles are held to count", () => {
    const rail = {
      "live-covering": "bare",
      "gets-in": "hand",
      "who-comes": "anyone",
      "arms-reach": "within",
      obstacle: "secured",
      "wet-or-conductive": "no",
    };
    expect(between(rail)?.state).toBe("gone");
    expect(states(between(rail))?.map(([, state]) => state)).toEqual(["gone", "gone", "gone", "gone"]);
    const held = between(rail, { distance: "counts" });
    expect(held?.state).toBe("one-event");
    expect(states(held)).toContainEqual(["distance or an obstacle", "one-event"]);
  });

  test("a topic that asks something else has none", () => {
    const topic = topicById("board-conductor-order");
    if (topic === undefined) throw new Error("no topic board-conductor-order");
    expect(reasonAbout({ topic, said: {} }).between).toBeUndefined();
  });
});
