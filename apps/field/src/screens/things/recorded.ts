import { LINK_IDS, THING_KIND_IDS, THING_KINDS, type ThingKind } from "@good-grounds/inspection";
import { join, membersOf, placesBelow } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { newName } from "../../shell/job.ts";
import { addMember, type Change } from "../installation/changes.ts";

/** A thing of the job: its kind, its id and its place in the record. */
export interface RecordedThing {
  readonly kind: ThingKind;
  readonly name: string;
  readonly path: string;
  /** The observation that brings it in; undefined for a listed one. */
  readonly broughtBy: string | undefined;
}

/** Where things belong: a board, one circuit of it; without both the origin or the whole. */
export interface Whose {
  readonly board?: string | undefined;
  readonly circuit?: string | undefined;
}

/** Every thing, those of the lists before those that observations bring in. */
export function thingsIn(record: JobRecord): readonly RecordedThing[] {
  return [
    ...below(record, "things", undefined),
    ...membersOf(record, "observations").flatMap((name) => below(record, `observations/${name}/brings`, name)),
  ];
}

function below(record: JobRecord, at: string, broughtBy: string | undefined): readonly RecordedThing[] {
  return THING_KIND_IDS.flatMap((kind) =>
    membersOf(record, join(at, kind)).map((name) => ({ kind, name, path: join(at, `${kind}/${name}`), broughtBy })),
  );
}

/** The thing of a kind with an id. */
export function thingAt(record: JobRecord, kind: string, name: string): RecordedThing | undefined {
  return thingsIn(record).find((one) => one.kind === kind && one.name === name);
}

/** Things of a board and its circuits, of one circuit, or of no board. */
export function thingsAt(record: JobRecord, { board, circuit }: Whose): readonly RecordedThing[] {
  return thingsIn(record).filter(
    ({ path }) =>
      (record.value(join(path, "board")) ?? undefined) === board &&
      (circuit === undefined || record.value(join(path, "circuit")) === circuit),
  );
}

/** What a thing is called: by its name, else by what it is and its number among those of its kind. */
export function thingName(record: JobRecord, { kind, name, path }: RecordedThing): string {
  const own = record.value(join(path, "name"));
  if (typeof own === "string" && own.trim() !== "") return own;
  const number = thingsIn(record)
    .filter((one) => one.kind === kind)
    .findIndex((one) => one.name === name);
  return `${THING_KINDS[kind].noun} ${number + 1}`;
}

/** A new thing where it belongs; nothing is said of it beyond that. */
export function addThing(
  record: JobRecord,
  kind: ThingKind,
  whose: Whose,
): { readonly name: string; readonly path: string; readonly changes: readonly Change[] } {
  const list = `things/${kind}`;
  const name = newName(THING_KINDS[kind].noun.split(" ")[0] ?? "thing");
  const path = join(list, name);
  const where = Object.entries(whose).flatMap(([member, value]): readonly Change[] =>
    value === undefined ? [] : [[join(path, member), value]],
  );
  return { name, path, changes: [...addMember(record, list, name), ...where] };
}

/** Takes a thing out with every mention of it; `undo` puts back what stood. */
export function removeThing(
  record: JobRecord,
  path: string,
): { readonly changes: readonly Change[]; readonly undo: readonly Change[] } {
  const id = path.slice(path.lastIndexOf("/") + 1);
  const mentions = [...mentionsByThings(record, id), ...mentionsByObservations(record, id)];
  return {
    changes: [[path, null], ...mentions.map(({ at, without }) => [at, without] as const)],
    undo: [[path, true], ...mentions.map(({ at, was }) => [at, was] as const)],
  };
}

interface Mention {
  readonly at: string;
  readonly was: Value;
  readonly without: Value;
}

/** Members by which things name others, or the place they are in. */
const NAMING = ["place", ...LINK_IDS.filter((link) => link !== "feeds")];

function mentionsByThings(record: JobRecord, id: string): readonly Mention[] {
  return thingsIn(record).flatMap(({ path }) =>
    NAMING.flatMap((member): readonly Mention[] => {
      const at = join(path, member);
      const was = record.value(at);
      if (was === id) return [{ at, was, without: null }];
      if (!Array.isArray(was) || !was.includes(id)) return [];
      const others = was.filter((one) => one !== id);
      return [{ at, was, without: others.length === 0 ? null : others }];
    }),
  );
}

function mentionsByObservations(record: JobRecord, id: string): readonly Mention[] {
  return membersOf(record, "observations").flatMap((name) => {
    const list = `observations/${name}/things`;
    return membersOf(record, list)
      .map((member) => join(list, member))
      .filter((at) => record.value(join(at, "thing")) === id)
      .map((at) => ({ at, was: true, without: null }));
  });
}

/** The changes that take apart lists which an earlier version wrote as one value, so that each member can be edited. */
export function unfolding(record: JobRecord): readonly Change[] {
  const lists = [
    ...thingsIn(record)
      .filter(({ kind }) => kind === "enclosures")
      .map(({ path }) => join(path, "openings")),
    ...membersOf(record, "observations").flatMap((name) =>
      THING_KIND_IDS.map((kind) => `observations/${name}/brings/${kind}`),
    ),
  ];
  return lists.flatMap((list): readonly Change[] => {
    const value = record.value(list);
    return Array.isArray(value) && value.length > 0 ? [[list, null], ...placesBelow(list, value)] : [];
  });
}
