import { describe, expect, test } from "vitest";
import { numbered, numberOf } from "./observation-number.ts";

const boards = [
  { id: "a", circuits: [{ id: "c1" }, { id: "c2" }] },
  { id: "b", circuits: [{ id: "c1" }] },
];

function seen(id: string, where: { board?: string; circuit?: string; place?: string }, classification = "C2" as const) {
  return { id, ...where, choice: { classification } };
}

const ids = (observations: ReturnType<typeof seen>[]) =>
  numbered({ observations, boards }).map(({ observation }) => observation.id);

describe("the numbers of observations", () => {
  test("go in a class from board to board, each board before its circuits, and what is at none last", () => {
    const list = [
      seen("nowhere", { place: "garden" }),
      seen("b1", { board: "b", circuit: "c1" }),
      seen("a2", { board: "a", circuit: "c2" }),
      seen("a1", { board: "a", circuit: "c1" }),
      seen("b", { board: "b" }),
      seen("a", { board: "a" }),
    ];
    expect(ids(list)).toEqual(["a", "a1", "a2", "b", "b1", "nowhere"]);
    expect(numberOf("b1", { observations: list, boards })).toBe(5);
  });

  test("keep together what is at one place, in the order of the file", () => {
    const list = [
      seen("hall", { place: "Hall" }),
      seen("kitchen", { place: "kitchen" }),
      seen("hall again", { place: "hall " }),
    ];
    expect(ids(list)).toEqual(["hall", "hall again", "kitchen"]);
  });

  test("never put a place before a class", () => {
    const list = [seen("c2", { board: "a" }), { ...seen("c1", {}), choice: { classification: "C1" as const } }];
    expect(numbered({ observations: list, boards }).map(({ observation }) => observation.id)).toEqual(["c1", "c2"]);
  });
});
