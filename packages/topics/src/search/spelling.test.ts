import { describe, expect, test } from "vitest";
import { slipsBetween } from "../text/slips.ts";
import { Spelling } from "./spelling.ts";

describe("slips between two words", () => {
  test.each([
    ["socket", "socket", 0],
    ["scoket", "socket", 1],
    ["soket", "socket", 1],
    ["sockket", "socket", 1],
    ["sacket", "socket", 1],
    ["nuetrel", "neutral", 2],
    ["", "rcd", 3],
  ])("%s and %s: %d", (one, other, slips) => {
    expect(slipsBetween(one, other)).toBe(slips);
    expect(slipsBetween(other, one)).toBe(slips);
  });
});

describe("the word that was meant", () => {
  const spelling = new Spelling(
    new Map([
      ["melt", 2],
      ["belt", 9],
      ["conductor", 5],
      ["earth", 7],
    ]),
  );
  test.each([
    ["mellt", "melt"],
    ["condutcro", "conductor"],
    ["erth", "earth"],
    ["felt", "belt"],
  ])("%s is %s", (typed, meant) => {
    expect(spelling.nearest(typed)).toBe(meant);
  });

  test.each([
    ["of three letters", "elt"],
    ["with a digit", "me1t"],
    ["far from all", "transformer"],
    ["two slips in a short word", "maltt"],
  ])("a word %s has none", (_, typed) => {
    expect(spelling.nearest(typed)).toBeUndefined();
  });
});
