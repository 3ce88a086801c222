import { describe, expect, test } from "vitest";
import type { Data } from "../engine/protocol.ts";
import { letterOf } from "./letter.ts";

const danger = {
  id: "o1",
  place: "Hall, socket by the door",
  what: "The plate is broken and live metal shows.",
  choice: { classification: "C1" },
};
const job = (observation: object, brief: object = {}) =>
  ({ inspectedOn: "2026-11-01", brief, observations: [observation] }) as unknown as Data;

describe("the letter for the client", () => {
  test("has the plain sentence where there is one", () => {
    const words = letterOf(job(danger), new Map([["o1", "A finger can touch live metal in it."]]));
    expect(words).toContain("- Hall, socket by the door: A finger can touch live metal in it.");
  });

  test("has the inspector's own words where there is none", () => {
    expect(letterOf(job(danger), new Map())).toContain(
      "- Hall, socket by the door: The plate is broken and live metal shows.",
    );
  });

  test("tells of danger that was dealt with what was found and what was done, and not that it is there now", () => {
    const safe = {
      ...danger,
      madeSafe: { done: "The circuit was locked off.", told: "tenant", at: "2026-11-01T10:00" },
    };
    const words = letterOf(job(safe), new Map([["o1", "A finger can touch live metal in it."]]));
    expect(words).not.toContain("can touch");
    expect(words).toContain("- Hall, socket by the door: The plate is broken and live metal shows.");
    expect(words).toContain("Done about it before we left: The circuit was locked off.");
    expect(words).not.toContain("Danger now");
  });

  test.each(["private-rented", "social-rented"])("%s: promises no dates that stand nowhere", (tenure) => {
    const words = letterOf(job(danger, { tenure }), new Map());
    expect(words).toContain("the law may set dates");
    expect(words).toContain("do not give them");
    expect(words).not.toContain("says more");
  });
});
