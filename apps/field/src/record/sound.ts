import { type Entry, entryId, type Value } from "./entry.ts";
import { equal, type Record as JobRecord } from "./record.ts";

/** More than any job has; beyond it a copy is refused before it takes the device's memory. */
const MOST_ENTRIES = 500_000;
const MOST_AUTHORS = 2000;
const MOST_STEPS = 16;
const LONGEST_PATH = 400;
const DEEPEST = 40;
/** Letters and parts of one value: a whole earlier inspection file is some hundred thousand. */
const LARGEST = 20_000_000;

const AUTHOR = /^[0-9A-Za-z-]{1,40}$/;
const PERSON = /^[0-9A-Za-z._-]{0,60}$/;
const MOMENT = /^\d{4}-\d\d-\d\dT\d\d:\d\d/;
const STEP = /^[^\p{Cc}\p{Cs}/]+$/u;

/** Whether something that was read from a file is an entry that a record can hold. */
export function isEntry(one: unknown): one is Entry {
  if (typeof one !== "object" || one === null) return false;
  const { id, author, number, seen, at, by, path, value } = one as { readonly [name: string]: unknown };
  return (
    typeof author === "string" &&
    AUTHOR.test(author) &&
    isCount(number) &&
    id === entryId(author, number) &&
    typeof seen === "object" &&
    seen !== null &&
    !Array.isArray(seen) &&
    Object.entries(seen).every(([other, count]) => AUTHOR.test(other) && isCount(count)) &&
    typeof at === "string" &&
    MOMENT.test(at) &&
    !Number.isNaN(Date.parse(at)) &&
    typeof by === "string" &&
    PERSON.test(by) &&
    typeof path === "string" &&
    isPath(path) &&
    isValue(value)
  );
}

/** Whether a place can be written to. */
export function isPath(path: string): boolean {
  if (path.length > LONGEST_PATH) return false;
  const steps = path.split("/");
  return steps.length <= MOST_STEPS && steps.every((step) => STEP.test(step) && step !== "__proto__");
}

/** Whether a value is plain data that can be shown, copied and compared without harm. */
export function isValue(value: unknown): value is Value {
  let room = LARGEST;
  const fits = (one: unknown, depth: number): boolean => {
    room -= typeof one === "string" ? one.length + 1 : 1;
    if (room < 0 || depth > DEEPEST) return false;
    if (one === null || typeof one === "boolean" || typeof one === "string") return true;
    if (typeof one === "number") return Number.isFinite(one);
    if (typeof one !== "object") return false;
    return Array.isArray(one)
      ? one.every((inner) => fits(inner, depth + 1))
      : Object.entries(one).every(([name, inner]) => fits(name, depth) && fits(inner, depth + 1));
  };
  return fits(value, 0);
}

/**
 * Whether entries are a whole: of every author all from the first on, each knowing its author's one before, nothing that
 * is not there, and all that was known to whatever it knew of. Every copy is so when it leaves a device. In one with
 * holes an entry could replace what nobody ever saw.
 */
export function isWhole(entries: readonly Entry[]): boolean {
  if (entries.length > MOST_ENTRIES) return false;
  const byId = new Map<string, Entry>();
  const last = new Map<string, number>();
  for (const entry of entries) {
    const same = byId.get(entry.id);
    if (same !== undefined && !isSame(same, entry)) return false;
    byId.set(entry.id, entry);
    last.set(entry.author, Math.max(last.get(entry.author) ?? 0, entry.number));
  }
  let count = 0;
  for (const number of last.values()) count += number;
  if (count !== byId.size || last.size > MOST_AUTHORS) return false;
  for (const { author, number, seen } of byId.values()) {
    if ((seen[author] ?? 0) !== number - 1) return false;
    const before = byId.get(entryId(author, number - 1))?.seen ?? {};
    if (!isAtLeast(seen, { ...before, ...(number > 1 ? { [author]: number - 1 } : {}) })) return false;
    for (const other in seen) {
      const known = seen[other] as number;
      // What the author's entry before knew of was looked at there.
      if (known === before[other] || other === author) continue;
      const entry = byId.get(entryId(other, known));
      if (entry === undefined || !isAtLeast(seen, entry.seen)) return false;
    }
  }
  return true;
}

/** Whether any entry stands in the record with the same id and another content: then one of the two is not genuine. */
export function contradicts(entries: readonly Entry[], record: JobRecord): boolean {
  return entries.some((entry) => {
    const here = record.entry(entry.id);
    return here !== undefined && !isSame(here, entry);
  });
}

/** Whether two entries say the same, whatever their ids. */
export function isSame(a: Entry, b: Entry): boolean {
  return a.path === b.path && a.at === b.at && a.by === b.by && equal(a.seen, b.seen) && equal(a.value, b.value);
}

function isAtLeast(more: Entry["seen"], less: Entry["seen"]): boolean {
  for (const author in less) if ((more[author] ?? 0) < (less[author] as number)) return false;
  return true;
}

function isCount(number: unknown): number is number {
  return Number.isSafeInteger(number) && (number as number) > 0;
}
