import { type OpenPoint, type Outcome, pointer } from "@good-grounds/core";

/** Something that has to be answered by a written reason before a report is issued. */
export interface InTheWay {
  /** Names it, the same as long as it stands at the same places: its kind, and where it stands first. */
  readonly name: string;
  readonly point: OpenPoint;
}

/** What stands in the way of issuing a report: every open point that decides, in the order of the ledger. */
export function standsInTheWay({ points }: Outcome): readonly InTheWay[] {
  const taken = new Map<string, number>();
  return points.map((point) => {
    const [first] = point.places;
    const base = first === undefined ? point.kind : `${point.kind} ${pointer(first)}`;
    const count = (taken.get(base) ?? 0) + 1;
    taken.set(base, count);
    return { name: count === 1 ? base : `${base} (${count})`, point };
  });
}
