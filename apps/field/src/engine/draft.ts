import type { Issue, Path } from "@good-grounds/core";
import { FORMAT, type InspectionFile, parseInspectionData, VERSION } from "@good-grounds/inspection";
import type { Value } from "../record/entry.ts";
import { LACKS, UNNAMED } from "../words/engine.ts";

/** A place where a finished file has something and this one does not, filled so that the rest can be read. */
export interface Filled {
  readonly path: Path;
  /** What is missing, in words; undefined where nobody has to be asked for it. */
  readonly words: string | undefined;
}

/** An unfinished document completed just enough to be read, and what had to be filled in or left out. */
export interface Draft {
  readonly file: InspectionFile;
  readonly filled: readonly Filled[];
  readonly left: readonly Issue[];
}

/** What every file needs. A star stands for every member of a list; a list that is not there is passed over. */
const NEEDED: readonly (readonly [path: string, value: Value, words?: string])[] = [
  ["format", FORMAT],
  ["version", VERSION],
  ["id", "draft"],
  ["edition", "2018+A4", LACKS.edition],
  ["inspectedOn", "2026-01-01", LACKS.inspectedOn],
  ["brief/client/name", UNNAMED.text, LACKS.client],
  ["brief/premises/address", [UNNAMED.text], LACKS.address],
  ["brief/use", "other", LACKS.use],
  ["brief/tenure", "other", LACKS.tenure],
  ["brief/nation", "england", LACKS.nation],
  ["brief/purpose", UNNAMED.text, LACKS.purpose],
  ["brief/records", []],
  ["visits", [{ date: "2026-01-01" }], LACKS.visits],
  ["people", []],
  ["instruments", []],
  ["extent/covered", UNNAMED.text, LACKS.covered],
  ["extent/sampling", []],
  ["limitations", []],
  ["supply/bonding", []],
  ["boards", [{ id: "board", name: UNNAMED.board, fedFrom: "supply", circuits: [] }], LACKS.boards],
  ["boards/*/name", UNNAMED.board, LACKS.boardName],
  ["boards/*/fedFrom", "supply", LACKS.fedFrom],
  ["boards/*/circuits", []],
  ["boards/*/circuits/*/designation", UNNAMED.designation, LACKS.designation],
  ["boards/*/circuits/*/description", UNNAMED.description, LACKS.description],
  ["inspected", []],
  ["observations", []],
  ["observations/*/place", UNNAMED.text, LACKS.place],
  ["observations/*/what", UNNAMED.text, LACKS.what],
  ["photographs", []],
  ["signatures", []],
];

/** Lists whose emptiness says as little as their absence: a file has at least one. */
const NOT_EMPTY: ReadonlySet<string> = new Set(["visits", "boards", "brief/premises/address"]);

/** Every round leaves out what stands in the way of reading; a job with more layers of damage than this is given up. */
const ROUNDS = 24;

type Holder = Record<string | number, unknown>;

/**
 * Completes an unfinished document and leaves out what cannot be read, both only for the weighing: nothing of it is
 * shown or kept. Undefined where it is no document at all, or damaged beyond reading.
 */
export function draftOf(data: unknown): Draft | undefined {
  if (typeof data !== "object" || data === null || Array.isArray(data)) return undefined;
  const root = structuredClone(data) as Holder;
  const filled = new Map<string, Filled>();
  const left: Issue[] = [];
  for (let round = 0; round < ROUNDS; round += 1) {
    for (const need of NEEDED) fill(root, need, filled);
    const parsed = parseInspectionData(root);
    if (parsed.ok) return { file: parsed.file, filled: [...filled.values()], left };
    const issues = parsed.issues.filter(({ path }) => path.length > 0);
    if (issues.length === 0) return undefined;
    for (const { path } of issues) leaveOut(root, path);
    sweep(root);
    left.push(...issues);
  }
  return undefined;
}

function fill(root: Holder, [pattern, value, words]: (typeof NEEDED)[number], filled: Map<string, Filled>): void {
  const steps = pattern.split("/");
  const go = (holder: Holder, depth: number, at: Path): void => {
    const step = steps[depth] as string;
    if (step === "*") {
      if (!Array.isArray(holder)) return;
      for (const [i, member] of holder.entries())
        if (typeof member === "object" && member !== null) go(member as Holder, depth + 1, [...at, i]);
      return;
    }
    const path = [...at, step];
    const stands = holder[step];
    if (depth === steps.length - 1) {
      const isMissing =
        stands === undefined || (NOT_EMPTY.has(pattern) && Array.isArray(stands) && stands.length === 0);
      if (!isMissing) return;
      holder[step] = structuredClone(value);
      filled.set(path.join("/"), { path, words });
      return;
    }
    // Under a star nothing is made up; above it, the objects on the way are.
    if (stands === undefined && !steps.slice(depth + 1).includes("*")) holder[step] = {};
    const next = holder[step];
    if (typeof next === "object" && next !== null) go(next as Holder, depth + 1, path);
  };
  go(root, 0, []);
}

const GONE = Symbol("left out");

/** Marks what an issue is about; where nothing stands there, what lacks it. */
function leaveOut(root: Holder, path: Path): void {
  let holder: Holder = root;
  let last: (() => void) | undefined;
  for (const step of path) {
    const here = holder;
    if (!Object.hasOwn(here, step) || here[step] === GONE) break;
    last = () => {
      here[step] = GONE;
    };
    const next = here[step];
    if (typeof next !== "object" || next === null) break;
    holder = next as Holder;
  }
  last?.();
}

function sweep(value: unknown): void {
  if (Array.isArray(value)) {
    for (let i = value.length - 1; i >= 0; i -= 1) if (value[i] === GONE) value.splice(i, 1);
    for (const member of value) sweep(member);
  } else if (typeof value === "object" && value !== null) {
    for (const [name, member] of Object.entries(value)) {
      if (member === GONE) delete (value as Holder)[name];
      else sweep(member);
    }
  }
}
