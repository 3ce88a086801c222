import type { ThingKind } from "@good-grounds/inspection";
import { type Entry, knewOf, type Value } from "./entry.ts";
import type { Record as JobRecord } from "./record.ts";

/** The lists of things in an inspection file; every thing is called by its id. */
export const THING_LISTS = [
  "places",
  "enclosures",
  "sections",
  "joints",
  "supplementaryBonds",
  "electrodes",
  "loads",
  "surgeDevices",
  "arcDevices",
] as const satisfies readonly ThingKind[];

/**
 * Places whose members are named in the record and stand as a list in the inspection file. `named`: the name is the
 * member `id` there; otherwise it is only the record's. A star stands for any name.
 */
const LISTS: readonly { readonly path: string; readonly named: boolean }[] = [
  { path: "people", named: true },
  { path: "instruments", named: true },
  { path: "visits", named: false },
  { path: "brief/records", named: false },
  { path: "precautions", named: false },
  { path: "earthingOff", named: false },
  { path: "limitations", named: true },
  { path: "extent/sampling", named: false },
  { path: "supply/bonding", named: true },
  { path: "supply/otherSources", named: true },
  { path: "boards", named: true },
  { path: "boards/*/rcds", named: true },
  { path: "boards/*/circuits", named: true },
  { path: "boards/*/circuits/*/readings/crossLineNeutral", named: false },
  { path: "boards/*/circuits/*/readings/crossLineCpc", named: false },
  ...THING_LISTS.map((list) => ({ path: `things/${list}`, named: true })),
  { path: "inspected", named: false },
  { path: "observations", named: true },
  { path: "observations/*/photographs", named: false },
  { path: "observations/*/things", named: false },
  { path: "standingViews", named: false },
  { path: "photographs", named: false },
  { path: "signatures", named: false },
  { path: "ownFigures", named: false },
];

/** Places whose whole content is one value although it is an object: a reading, a device, a choice. */
const WHOLE: readonly string[] = [
  "precautions/*",
  "earthingOff/*/off",
  "earthingOff/*/on",
  "supply/device",
  "supply/mainSwitch",
  "supply/readings/*",
  "supply/bonding/*/resistance",
  "boards/*/fedFrom",
  "boards/*/mainSwitch",
  "boards/*/readings/*",
  "boards/*/conditionalRating",
  "boards/*/circuits/*/device",
  "boards/*/circuits/*/rcd",
  "boards/*/circuits/*/cable/*",
  "boards/*/circuits/*/readings/*",
  "boards/*/circuits/*/liveBeforeContinuity",
  "things/*/*/resistance",
  "observations/*/choice",
  "observations/*/madeSafe",
  "observations/*/facts/*",
  "observations/*/positions/*",
  "conclusion/nextInspection",
  "topics",
];

/** Names that begin so are the record's own and not part of the inspection file. */
const OWN = "~";

/** The place of a member's order within its list; smaller first. */
export const ORDER = `${OWN}order`;

/** A record as the data of an inspection file. Where several values stand at a place, none is taken. */
export function documentOf(record: JobRecord): { readonly [name: string]: Value } {
  return (build(record, "") as { readonly [name: string]: Value } | undefined) ?? {};
}

function build(record: JobRecord, path: string): Value | undefined {
  const own = record.value(path);
  const { list, whole } = kindOf(path);
  const names = record.names(path).filter((name) => !name.startsWith(OWN));
  if (list !== undefined) {
    const members = membersOf(record, path);
    if (members.length === 0) return own ?? (names.length > 0 ? [] : undefined);
    return members.flatMap((name) => {
      const member = build(record, join(path, name));
      if (member === undefined || member === null) return list.named ? [{ id: name }] : [];
      if (!list.named) return [member];
      return [{ id: name, ...(member as { readonly [name: string]: Value }) }];
    });
  }
  if (names.length === 0 || whole) return own;
  const members: (readonly [string, Value])[] = [];
  for (const name of names) {
    const member = build(record, join(path, name));
    if (member !== undefined && member !== null) members.push([name, member]);
  }
  // Not by assignment: a member called "__proto__" is a member like any other.
  return members.length === 0 ? own : Object.fromEntries(members);
}

/** Names of the members of a list that were not taken out, in their order. */
export function membersOf(record: JobRecord, path: string): readonly string[] {
  return record
    .names(path)
    .filter((name) => !name.startsWith(OWN) && !isRemoved(record, join(path, name)))
    .map((name) => ({ name, order: orderOf(record, join(path, name)) }))
    .sort((a, b) => a.order - b.order || (a.name < b.name ? -1 : 1))
    .map(({ name }) => name);
}

/**
 * Whether a member of a list was taken out. Where somebody wrote in it without knowing of that, it stays until somebody
 * who sees both takes it out again: nothing written is lost behind the back of whoever wrote it.
 */
function isRemoved(record: JobRecord, path: string): boolean {
  const standing = record.standing(path);
  return standing.length > 0 && standing.every(({ value }) => value === null) && !writtenApart(record, path, standing);
}

/** Members of lists that somebody took out while somebody else, not knowing of it, wrote in them. */
export function takenOutAndWritten(record: JobRecord): readonly string[] {
  const found: string[] = [];
  const walk = (path: string): void => {
    const names = record.names(path);
    const list = kindOf(path).list !== undefined;
    for (const name of names) {
      const at = join(path, name);
      const standing = record.standing(at);
      const out = list && standing.length > 0 && standing.every(({ value }) => value === null);
      if (!out) walk(at);
      else if (writtenApart(record, at, standing)) found.push(at);
    }
  };
  walk("");
  return found;
}

function writtenApart(record: JobRecord, path: string, removals: readonly Entry[]): boolean {
  return record.names(path).some((name) => {
    const at = join(path, name);
    return (
      record
        .standing(at)
        .some(
          (entry) =>
            entry.value !== null && removals.every((removal) => !knewOf(removal, entry) && !knewOf(entry, removal)),
        ) || writtenApart(record, at, removals)
    );
  });
}

function orderOf(record: JobRecord, path: string): number {
  const order = record.value(join(path, ORDER));
  return typeof order === "number" ? order : Number.MAX_SAFE_INTEGER;
}

/** The changes that write an inspection file's data into an empty record: place and value. */
export function placesOf(data: { readonly [name: string]: Value }): readonly (readonly [path: string, value: Value])[] {
  const places: (readonly [string, Value])[] = [];
  const walk = (path: string, value: Value): void => {
    const { list, whole } = kindOf(path);
    if (list !== undefined && Array.isArray(value)) {
      // A list that was found empty is something else than one nobody has looked at.
      if (value.length === 0) places.push([path, value]);
      for (const [number, member] of value.entries()) {
        const name = list.named
          ? String((member as { readonly id?: Value }).id ?? `m${number}`)
          : `m${String(number).padStart(4, "0")}`;
        const at = join(path, name);
        if (kindOf(at).whole || typeof member !== "object") {
          places.push([at, member as Value], [join(at, ORDER), number]);
          continue;
        }
        places.push([at, true], [join(at, ORDER), number]);
        for (const [key, inner] of Object.entries(member as object))
          if (!(list.named && key === "id")) walk(join(at, key), inner as Value);
      }
      return;
    }
    if (whole || !isBranch(value)) {
      places.push([path, value]);
      return;
    }
    for (const [key, inner] of Object.entries(value)) walk(join(path, key), inner as Value);
  };
  for (const [key, value] of Object.entries(data)) walk(key, value);
  return places;
}

export function join(path: string, name: string): string {
  return path === "" ? name : `${path}/${name}`;
}

/** What of {@link LISTS} and {@link WHOLE} a place is. The same places are asked for at every change, so it is remembered. */
function kindOf(path: string): Kind {
  const known = KINDS.get(path);
  if (known !== undefined) return known;
  const steps = path.split("/");
  const kind = {
    list: LISTS.find((_, i) => matches(LIST_STEPS[i] as readonly string[], steps)),
    whole: WHOLE_STEPS.some((pattern) => matches(pattern, steps)),
  };
  KINDS.set(path, kind);
  return kind;
}

interface Kind {
  readonly list: (typeof LISTS)[number] | undefined;
  readonly whole: boolean;
}

const KINDS = new Map<string, Kind>();
const LIST_STEPS = LISTS.map(({ path }) => path.split("/"));
const WHOLE_STEPS = WHOLE.map((path) => path.split("/"));

function matches(pattern: readonly string[], steps: readonly string[]): boolean {
  return pattern.length === steps.length && pattern.every((step, i) => step === "*" || step === steps[i]);
}

/** Members that make an object one statement: a reading, a range, or why there is none. */
const STATEMENTS = ["shown", "notTaken", "notKnown", "from"];

/** Whether the members of a value are values of their own. */
function isBranch(value: Value): value is { readonly [name: string]: Value } {
  if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
  const names = Object.keys(value);
  return names.length > 0 && !names.some((name) => STATEMENTS.includes(name));
}
