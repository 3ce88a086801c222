import type { Path } from "@good-grounds/core";
import type { EntryOf } from "../fields/field.ts";
import { type OPENING, THING_KIND_IDS, type ThingKind } from "../fields/things/index.ts";
import type { ThingLists } from "../schema/things.ts";

/** What of a file holds things. */
export interface WithThings {
  readonly things?: ThingLists | undefined;
  readonly observations?: readonly { readonly id: string; readonly brings?: ThingLists | undefined }[] | undefined;
}

/** What is written of a thing whatever its kind; properties that belong to its kind are read through their fields. */
export interface ThingEntry {
  readonly id: string;
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
  readonly place?: string | undefined;
  readonly name?: string | undefined;
  readonly quantity?: number | undefined;
  readonly between?: readonly string[] | undefined;
  readonly enclosure?: string | undefined;
  readonly feeds?: readonly string[] | undefined;
  readonly openings?: readonly EntryOf<typeof OPENING>[] | undefined;
}

/** One thing as it is written, with its place in the file. */
export interface ListedThing {
  readonly kind: ThingKind;
  readonly entry: ThingEntry;
  readonly path: Path;
  /** Id of the observation that brings it in. */
  readonly broughtBy: string | undefined;
}

/** Every thing of a file in the order of its kinds, listed ones before those that observations bring in. */
export function* thingsIn(file: WithThings): Generator<ListedThing> {
  yield* of(file.things, ["things"], undefined);
  for (const [i, { id, brings }] of (file.observations ?? []).entries())
    yield* of(brings, ["observations", i, "brings"], id);
}

function* of(lists: ThingLists | undefined, path: Path, broughtBy: string | undefined): Generator<ListedThing> {
  for (const kind of THING_KIND_IDS)
    for (const [i, entry] of (lists?.[kind] ?? []).entries())
      yield { kind, entry, path: [...path, kind, i], broughtBy };
}
