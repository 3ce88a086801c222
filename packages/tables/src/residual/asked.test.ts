import { RCD_TYPES } from "@good-grounds/core";
import { expect, test } from "vitest";
import { regulation } from "../regulations/index.ts";
import { RESIDUAL_LOADS, TYPES_FOR_LOADS, typesForLoad } from "./type-for-load.ts";
import { RCD_ASKED, RCD_PLACES, rcdAsked } from "./where-asked.ts";

test("every place has one row, with a number of the standard's form", () => {
  expect(RCD_ASKED.map(({ place }) => place)).toEqual([...RCD_PLACES]);
  for (const { regulation: number } of RCD_ASKED) expect(number).toMatch(/^(411|522|70\d|714|717|722|753)\./);
});

test("a row does not claim to have been read where the regulation's own row does not", () => {
  for (const { place, source } of RCD_ASKED) {
    const own = regulation(rcdAsked(place).regulation);
    if (own === undefined) expect(source.basis, place).toBe("memory");
    else expect([place, source.basis]).toEqual([place, own.source.basis]);
  }
});

test("a type that responds to more is never left out where a lesser one is enough", () => {
  expect(TYPES_FOR_LOADS.map(({ load }) => load)).toEqual([...RESIDUAL_LOADS]);
  for (const { load, types } of TYPES_FOR_LOADS) {
    const lowest = RCD_TYPES.findIndex((type) => types.includes(type));
    expect(lowest, load).toBeGreaterThanOrEqual(0);
    expect([...types], load).toEqual(RCD_TYPES.slice(lowest));
  }
});

test("smooth direct current asks type B, and only fixed equipment without direct current is served by type AC", () => {
  expect(typesForLoad("frequency-controlled-three-phase").types).toEqual(["B"]);
  expect(TYPES_FOR_LOADS.filter(({ types }) => types.includes("AC")).map(({ load }) => load)).toEqual([
    "resistive-fixed",
  ]);
});
