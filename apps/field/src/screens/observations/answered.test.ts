import { expect, test } from "vitest";
import { answeredBy, isSame } from "./answered.ts";

test.each([
  ["supply", "", "", {}],
  ["supply/bonding/water", "", "", { part: "water" }],
  ["supply", "cu", "", undefined],
  ["boards/cu", "cu", "", {}],
  ["boards/cu/rcds/main", "cu", "", { part: "main" }],
  ["boards/cu/circuits/c3", "cu", "", { circuit: "c3" }],
  ["boards/cu/circuits/c3", "cu", "c3", {}],
  ["boards/cu/circuits/c3/rcd/own", "cu", "c3", {}],
  ["boards/cu/circuits/c4", "cu", "c3", undefined],
  ["boards/cu", "cu", "c3", undefined],
  ["boards/shed/circuits/c3", "cu", "c3", undefined],
  ["boards/cu", "", "", undefined],
])("%s from an observation at %j %j", (path, board, circuit, answer) => {
  expect(answeredBy(path, board, circuit)).toEqual(answer);
});

test("what is left out stands for the observation's own place", () => {
  const own = { board: "cu", circuit: "c3" };
  expect(isSame({ check: "polarity" }, { check: "polarity", board: "cu", circuit: "c3" }, own)).toBe(true);
  expect(isSame({ check: "polarity" }, { check: "polarity", circuit: "c4" }, own)).toBe(false);
  expect(isSame({ check: "polarity" }, { check: "maximum-zs" }, own)).toBe(false);
});
