import { expect, test } from "vitest";
import { TOPICS } from "../own.ts";
import { PLACES } from "./places.ts";
import { SITE_WORDS } from "./site-words.ts";
import { SITUATIONS } from "./situations.ts";
import { STATES } from "./states.ts";
import { THINGS } from "./things.ts";

const ids = new Set(TOPICS.map(({ id }) => id));

test("no notion is in two tables", () => {
  const names = [STATES, THINGS, PLACES].flatMap((table) => Object.keys(table));
  expect(names.filter((name, i) => names.indexOf(name) !== i)).toEqual([]);
});

test("a situation speaks of states, things and places that are in the tables", () => {
  const known = new Set([STATES, THINGS, PLACES].flatMap((table) => Object.keys(table)));
  const said = SITUATIONS.flatMap(([states, of]) => `${states} ${of}`.split(/[ +]/));
  expect(said.filter((word) => !known.has(word))).toEqual([]);
});

test("situations begin with states", () => {
  const states = new Set(Object.keys(STATES));
  expect(SITUATIONS.flatMap(([said]) => said.split(" ")).filter((way) => !states.has(way.replace(/\+.*/, "")))).toEqual(
    [],
  );
});

test("the tables name topics that exist", () => {
  const named = [...Object.keys(SITE_WORDS), ...SITUATIONS.flatMap(([, , topics]) => topics.split(" "))];
  expect(named.filter((id) => !ids.has(id))).toEqual([]);
});
