import type { Path } from "@good-grounds/core";
import { type Draft as ReadDraft, readDraft } from "@good-grounds/inspection";
import { LACKS } from "../words/engine.ts";

/** A place where a finished file has something and this one does not, in words. */
interface Missing {
  readonly path: Path;
  readonly words: string;
}

/** An unfinished document as far as it can be read, what is missing in it, and what had to be left out. */
export interface Draft extends ReadDraft {
  readonly missing: readonly Missing[];
}

/** What somebody has to be asked for before a file is finished. A star stands for every member of a list. */
const NEEDED: readonly (readonly [path: string, words: string])[] = [
  ["edition", LACKS.edition],
  ["inspectedOn", LACKS.inspectedOn],
  ["brief/client/name", LACKS.client],
  ["brief/premises/address", LACKS.address],
  ["brief/use", LACKS.use],
  ["brief/tenure", LACKS.tenure],
  ["brief/nation", LACKS.nation],
  ["brief/purpose", LACKS.purpose],
  ["visits", LACKS.visits],
  ["extent/covered", LACKS.covered],
  ["boards", LACKS.boards],
  ["boards/*/name", LACKS.boardName],
  ["boards/*/fedFrom", LACKS.fedFrom],
  ["boards/*/circuits/*/designation", LACKS.designation],
  ["boards/*/circuits/*/description", LACKS.description],
  ["observations/*/place", LACKS.place],
  ["observations/*/what", LACKS.what],
];

/** Reads an unfinished document; nothing is filled in. Undefined where it is none at all, or damaged beyond reading. */
export function draftOf(data: unknown): Draft | undefined {
  const draft = readDraft(data);
  if (draft === undefined) return undefined;
  const missing = NEEDED.flatMap(([pattern, words]) =>
    lacking(draft.file, pattern.split("/"), []).map((path) => ({ path, words })),
  );
  return { ...draft, missing };
}

/** The places of a pattern where nothing stands; a list with nothing in it says as little as none. */
function lacking(value: unknown, [step, ...rest]: readonly string[], at: Path): readonly Path[] {
  if (step === undefined) return isNothing(value) ? [at] : [];
  if (step === "*") return Array.isArray(value) ? value.flatMap((member, i) => lacking(member, rest, [...at, i])) : [];
  const inner = typeof value === "object" && value !== null ? Reflect.get(value, step) : undefined;
  // What lies below a list that is not there is not asked for one by one.
  if (inner === undefined && rest.includes("*")) return [];
  return lacking(inner, rest, [...at, step]);
}

function isNothing(value: unknown): boolean {
  return value === undefined || (Array.isArray(value) && value.length === 0);
}
