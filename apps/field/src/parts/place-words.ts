import { ITEMS } from "@good-grounds/inspection/items";
import { join, membersOf } from "../record/document.ts";
import type { Record as JobRecord } from "../record/record.ts";
import { memberName, ONE_OF, spaced } from "../words/members.ts";

/**
 * A place of the record for people: "boards/b1/circuits/c3/readings/zs" as "Board 1 › circuit 3 › Zs". Members of lists
 * are called as people call them, or counted; a place of the file, where they are numbered from 0, is taken as well.
 */
export function placeWords(record: JobRecord, path: string): string {
  const words: string[] = [];
  const steps = path.split("/");
  let at = "";
  let list: string | undefined;
  for (const [i, step] of steps.entries()) {
    const isLast = i === steps.length - 1;
    if (list !== undefined) {
      const member = named(record, at, step);
      words.push(memberWords(record, at, member, list));
      at = join(at, member);
      list = undefined;
      continue;
    }
    at = join(at, step);
    if (!isLast && Object.hasOwn(ONE_OF, step)) list = step;
    else if (!step.startsWith("~") && (isLast || step !== "readings")) words.push(memberName(step));
  }
  return words.join(" › ");
}

/** The name of a member in the record, where a file only numbers it. */
function named(record: JobRecord, list: string, step: string): string {
  if (!/^\d+$/.test(step)) return step;
  const names = membersOf(record, list);
  return names.includes(step) ? step : (names[Number(step)] ?? step);
}

/** Members of a list by which people call its members, the best first. */
const NAMED = ["designation", "name", "number", "description", "what", "place", "kind"];

const LONGEST = 60;

function memberWords(record: JobRecord, list: string, name: string, kind: string): string {
  const at = join(list, name);
  if (kind === "facts" || kind === "positions") return spaced(name);
  const item = record.value(join(at, "item"));
  const asked = typeof item === "string" ? ITEMS.find(({ id }) => id === item)?.asks : undefined;
  const called = NAMED.map((one) => record.value(join(at, one))).find(
    (one) => typeof one === "string" && one.trim() !== "",
  );
  const own = asked ?? called;
  if (kind === "circuits" && typeof own === "string") return `${ONE_OF.circuits} ${own.slice(0, LONGEST)}`;
  if (kind === "bonding" && typeof record.value(join(at, "to")) === "string")
    return `${ONE_OF.bonding}, ${spaced(String(record.value(join(at, "to"))))}`;
  if (typeof own === "string") return own.slice(0, LONGEST);
  const number = membersOf(record, list).indexOf(name) + 1;
  return number === 0 ? (ONE_OF[kind] ?? "") : `${ONE_OF[kind]} ${number}`;
}
