import { describe, expect, test } from "vitest";
import { topicById } from "../topics/index.ts";
import { reasonTopic } from "./topic-reasoning.ts";

function between(facts: Readonly<Record<string, string>>, positions: Readonly<Record<string, string>> = {}) {
  const topic = topicById("basic-protection");
  if (topic === undefined) throw new Error("no topic basic-protection");
  return reasonTopic(topic, "2018+A4", facts, positions).between;
}

const states = (given: ReturnType<typeof between>) => given?.layers.map(({ name, state }) => [name, state]);

describe("layers between live metal and a person", () => {
  test("every layer, where what they come to is open", () => {
    const found = between({ covering: "basic-sound", wears: "knocks" });
    expect(found?.state).toBe("not-known");
    expect(states(found)).toEqual([
      ["the covering of the live part", "one-event"],
      ["what is around it", "not-known"],
      ["distance or an obstacle", "not-known"],
      ["a lock on the place", "not-known"],
    ]);
  });

  test("only what is known, where it is settled", () => {
    const found = between({ covering: "double-or-reinforced" });
    expect(found?.state).toBe("holds");
    expect(states(found)).toEqual([["the covering of the live part", "holds"]]);
  });

  test("why several layers come to one is said, and only then", () => {
    const door = {
      "gets-in": "nothing",
      fixing: "whole",
      "hinges-carry": "yes",
      opens: "hand",
      "allowed-opening": "no",
      "barrier-behind": "no",
      "arms-reach": "within",
      obstacle: "none",
      "who-comes": "named-keeper",
    };
    const tails = between({ ...door, covering: "basic-sound", wears: "moved" });
    expect(tails?.state).toBe("one-event");
    expect(tails?.because).toBe("what acts on the insulation gets past what is around it");
    expect(between({ ...door, covering: "bare" })?.because).toBe(
      "whoever gets to the place also opens what is around it",
    );
    expect(between({ ...door, covering: "basic-damaged", "wet-or-conductive": "no" })?.because).toContain(
      "begun to fail",
    );
    expect(between({ ...door, covering: "basic-sound", wears: "nothing" })?.because).toBe("");
    expect(between({ ...door, covering: "bare", "who-comes": "anyone" })?.because).toBe("");
  });

  test("bars behind a rail: gone, and one layer left where obstacles are held to count", () => {
    const rail = {
      covering: "bare",
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
    const topic = topicById("board-blank-missing");
    if (topic === undefined) throw new Error("no topic board-blank-missing");
    expect(reasonTopic(topic, "2018+A4", {}).between).toBeUndefined();
  });
});
