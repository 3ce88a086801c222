import type { Issue, Path } from "@good-grounds/core";
import { THING_KINDS } from "../fields/things/index.ts";
import { duplicate, refer, unknown } from "../reference-issue.ts";
import type { InspectionFile } from "../schema/file.ts";
import { LINK_IDS, LINKS, linksOf } from "./links.ts";
import { type ListedThing, thingsIn } from "./listed.ts";

/** Things whose id is taken, whose board, circuit or place is not there, and names of things that lead nowhere or to two. */
export function thingReferences(file: InspectionFile): readonly Issue[] {
  const listed = [...thingsIn(file)];
  const held = new Map<string, ListedThing>();
  const issues: Issue[] = [];
  for (const one of listed) {
    const earlier = held.get(one.entry.id);
    if (earlier === undefined) held.set(one.entry.id, one);
    else issues.push(duplicate(one.entry.id, one.path, "thing", `${earlier.path.join("/")} has the same id`));
  }
  for (const one of listed) issues.push(...whereabouts(one, file, held), ...links(one, file, held));
  for (const i of file.observations.keys()) issues.push(...spokenOf(file, i, held));
  return issues;
}

function whereabouts(
  { entry, path }: ListedThing,
  file: InspectionFile,
  held: ReadonlyMap<string, ListedThing>,
): Issue[] {
  const issues: Issue[] = [];
  const { board, circuit, place } = entry;
  const at = file.boards.find(({ id }) => id === board);
  if (board !== undefined) refer(issues, new Set(file.boards.map(({ id }) => id)), "board", board, [...path, "board"]);
  if (circuit !== undefined && board === undefined)
    issues.push({
      code: "circuit-without-board",
      path: [...path, "circuit"],
      found: circuit,
      expected: "a board beside it, since circuits of different boards may have the same id",
      advice: "add the board",
    });
  else if (circuit !== undefined && at !== undefined)
    refer(issues, new Set(at.circuits.map(({ id }) => id)), "circuit of that board", circuit, [...path, "circuit"]);
  if (place !== undefined) refer(issues, ofKind(held, "places"), "place", place, [...path, "place"]);
  return issues;
}

function links({ entry, path }: ListedThing, file: InspectionFile, held: ReadonlyMap<string, ListedThing>): Issue[] {
  const issues: Issue[] = [];
  const named = linksOf(entry);
  for (const link of LINK_IDS) {
    const to = LINKS[link];
    const board = file.boards.find(({ id }) => id === entry.board);
    const known = to === "circuits" ? new Set(board?.circuits.map(({ id }) => id)) : ofKind(held, to);
    const noun = to === "circuits" ? "circuit of its board" : THING_KINDS[to].noun;
    for (const [i, id] of (named[link] ?? []).entries())
      refer(issues, known, noun, id, [...path, link, ...(Array.isArray(Reflect.get(entry, link)) ? [i] : [])]);
  }
  return issues;
}

/** The things an observation names: listed ones, bonding conductors, and RCDs of the board named. */
function spokenOf(file: InspectionFile, number: number, held: ReadonlyMap<string, ListedThing>): Issue[] {
  const issues: Issue[] = [];
  const observation = file.observations[number];
  const bonds = new Set(file.supply.bonding.map(({ id }) => id));
  for (const [j, { thing, board }] of (observation?.things ?? []).entries()) {
    const path: Path = ["observations", number, "things", j];
    if (board !== undefined)
      refer(issues, new Set(file.boards.map(({ id }) => id)), "board", board, [...path, "board"]);
    const at = file.boards.find(({ id }) => id === (board ?? observation?.board));
    const rcds = new Set((at?.rcds ?? []).map(({ id }) => id));
    // Where a board is named beside it, an RCD of that board is meant before anything else.
    const fits =
      board !== undefined && rcds.has(thing)
        ? 1
        : Number(held.has(thing)) + Number(bonds.has(thing)) + Number(rcds.has(thing));
    if (fits === 0) unknown(issues, new Set([...held.keys(), ...bonds, ...rcds]), "thing", thing, [...path, "thing"]);
    if (fits > 1)
      issues.push({
        code: "two-things",
        path: [...path, "thing"],
        found: thing,
        expected: "an id that only one thing, bonding conductor or RCD of the board has",
        advice: "give one of them another id, or name the board of the RCD beside it",
      });
  }
  return issues;
}

function ofKind(held: ReadonlyMap<string, ListedThing>, kind: ListedThing["kind"]): ReadonlySet<string> {
  return new Set([...held].flatMap(([id, one]) => (one.kind === kind ? [id] : [])));
}
