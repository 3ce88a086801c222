import type { OpenPoint } from "@good-grounds/core";
import { isReasonOfItsOwn } from "../written-reason.ts";
import type { Recorded } from "./row.ts";
import { CONTRADICTION_ROWS } from "./rows.ts";

/** A contradiction that nobody answered, and the check it is with, where it is with one. */
export interface OpenContradiction {
  readonly point: OpenPoint & { readonly kind: "contradiction" };
  readonly check?: string;
}

/** Rows whose clashes stand apart, each with what it is about; those of the others are one point. */
const APART: ReadonlySet<string> = new Set([
  "in-order-beside-none",
  "in-order-beside-failed-check",
  "not-applicable-beside-recorded",
  "limitation-over-measured",
]);

/** Records that cannot all stand, and of which nobody wrote why. */
export function contradictions(recorded: Recorded): readonly OpenContradiction[] {
  return CONTRADICTION_ROWS.flatMap(({ id, find }) => {
    const open = find(recorded).filter(({ reason }) => !isReasonOfItsOwn(reason));
    const groups = APART.has(id) ? open.map((one) => [one]) : open.length === 0 ? [] : [open];
    return groups.map((group) => {
      const [{ check } = {}] = group;
      const places = group.flatMap((one) => one.places);
      return {
        point: { kind: "contradiction", about: id, places },
        ...(check === undefined ? {} : { check }),
      } as const;
    });
  });
}
