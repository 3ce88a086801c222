import { join, membersOf, ORDER } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";

export type Change = readonly [path: string, value: Value];

/** Orders of the members of a list, made up where nobody gave any. */
function ordersOf(record: JobRecord, list: string): readonly (readonly [name: string, order: number])[] {
  let last = -1;
  return membersOf(record, list).map((name) => {
    const order = record.value(join(list, `${name}/${ORDER}`));
    last = typeof order === "number" && order > last ? order : last + 1;
    return [name, last] as const;
  });
}

/** Writes down the orders of a list where they are not all there, so that a member can be set between two others. */
function settled(record: JobRecord, list: string): readonly Change[] {
  return ordersOf(record, list)
    .filter(([name, order]) => record.value(join(list, `${name}/${ORDER}`)) !== order)
    .map(([name, order]) => [join(list, `${name}/${ORDER}`), order] as const);
}

/** A new member after another, or at the end. */
export function addMember(record: JobRecord, list: string, name: string, after?: string): readonly Change[] {
  const orders = ordersOf(record, list);
  const at = after === undefined ? orders.length - 1 : orders.findIndex(([other]) => other === after);
  const before = orders[at]?.[1] ?? -1;
  const behind = orders[at + 1]?.[1];
  const order = behind === undefined ? before + 1 : (before + behind) / 2;
  return [...settled(record, list), [join(list, name), true], [join(list, `${name}/${ORDER}`), order]];
}

/** A member one place up or down; nothing at the end of the list. */
export function moveMember(record: JobRecord, list: string, name: string, by: -1 | 1): readonly Change[] {
  const orders = ordersOf(record, list);
  const at = orders.findIndex(([other]) => other === name);
  const [own, other] = [orders[at], orders[at + by]];
  if (own === undefined || other === undefined) return [];
  return [
    ...settled(record, list).filter(([path]) => !path.includes(`/${own[0]}/`) && !path.includes(`/${other[0]}/`)),
    [join(list, `${own[0]}/${ORDER}`), other[1]],
    [join(list, `${other[0]}/${ORDER}`), own[1]],
  ];
}

/** The number a new circuit gets: one more than the largest there is. */
export function nextDesignation(record: JobRecord, board: string): string {
  const list = join(board, "circuits");
  const numbers = membersOf(record, list).map((name) =>
    Number.parseInt(String(record.value(join(list, `${name}/designation`))), 10),
  );
  return String(Math.max(0, ...numbers.filter(Number.isFinite)) + 1);
}

/** Particulars that sister circuits share. What was measured, and the length, belongs to one circuit alone. */
const SHARED = [
  "shape",
  "load",
  "phases",
  "socketOutlets",
  "device",
  "rcd",
  "cable/kind",
  "cable/insulation",
  "cable/material",
  "cable/line",
  "cable/neutral",
  "cable/cpc",
  "cable/cpcArrangement",
  "cable/cores",
  "cable/methods",
  "cable/ambient",
  "cable/grouped",
] as const;

/** Copies the particulars of a circuit to another, where nothing is recorded there. */
export function copyParticulars(record: JobRecord, from: string, to: string): readonly Change[] {
  return SHARED.flatMap((name): readonly Change[] => {
    const value = record.value(join(from, name));
    if (value === undefined || record.standing(join(to, name)).some((entry) => entry.value !== null)) return [];
    return [[join(to, name), name === "rcd" ? untested(value) : value]];
  });
}

/** An RCD of the same make without the tests of the one it is copied from. */
function untested(rcd: Value): Value {
  if (typeof rcd !== "object" || rcd === null || Array.isArray(rcd) || !("own" in rcd)) return rcd;
  const { readings: _, ...own } = rcd.own as { readonly [name: string]: Value };
  return { own };
}
