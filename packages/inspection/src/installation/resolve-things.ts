import type { Path } from "@good-grounds/core";
import { type EntryOf, leavesOf } from "../fields/field.ts";
import type { Leaves } from "../fields/leaves.ts";
import { OPENING, THING_KIND_IDS, THING_KINDS, type ThingKind } from "../fields/things/index.ts";
import { linksOf } from "../things/links.ts";
import { type ListedThing, thingsIn, type WithThings } from "../things/listed.ts";
import type { Thing, Things, Whereabouts } from "./things.ts";

/** Resolves the things of a file: those it lists and those its observations bring in. */
export function resolveThings(leaves: Leaves, file: WithThings): Things {
  const all = Object.freeze([...thingsIn(file)].map((listed) => thing(leaves, listed)));
  const ids = new Map(all.map((one) => [one.id, one]));
  const kinds = new Map<ThingKind, readonly Thing[]>(
    THING_KIND_IDS.map((kind) => [kind, Object.freeze(all.filter((one) => one.kind === kind))]),
  );
  const ofKind = <K extends ThingKind>(kind: K) => (kinds.get(kind) ?? []) as readonly Thing<K>[];
  return Object.freeze({
    all,
    byId: (id) => ids.get(id),
    ofKind,
    at: (kind, where) => ofKind(kind).filter((one) => isAt(one, where)),
  } satisfies Things);
}

function thing(leaves: Leaves, { kind, entry, path, broughtBy }: ListedThing): Thing {
  const { fields } = THING_KINDS[kind];
  const openings = entry.openings ?? [];
  return Object.freeze({
    kind,
    id: entry.id,
    path,
    name: entry.name,
    board: entry.board,
    circuit: entry.circuit,
    place: entry.place,
    quantity: entry.quantity ?? 1,
    broughtBy,
    links: linksOf(entry),
    // A kind and its fields belong together; the type system loses the tie where kinds are a union.
    state: Object.freeze(leavesOf(fields, leaves, entry as EntryOf<typeof fields>, path)) as Thing["state"],
    openings: Object.freeze(openings.map((opening, i) => openingAt(leaves, opening, [...path, "openings", i]))),
  });
}

function openingAt(leaves: Leaves, entry: EntryOf<typeof OPENING>, path: Path) {
  return Object.freeze(leavesOf(OPENING, leaves, entry, path));
}

function isAt(one: Thing, { board, circuit, place }: Whereabouts): boolean {
  if (board === undefined && circuit === undefined && place === undefined)
    return one.board === undefined && one.circuit === undefined;
  return (
    (board === undefined || one.board === board) &&
    (circuit === undefined || one.circuit === circuit) &&
    (place === undefined || one.place === place)
  );
}
