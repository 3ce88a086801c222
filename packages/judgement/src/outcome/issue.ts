import { type OpenPoint, type Outcome, pointer } from "@good-grounds/core";

/** Something that has to be answered by a written reason before a report is issued. */
export interface InTheWay {
  /** Names it, the same as long as it stands at the same places: its kind, what it is about, and where it stands first. */
  readonly name: string;
  readonly point: OpenPoint;
}

/** What tells points of one kind at one place apart. */
function subjectOf(point: OpenPoint): readonly string[] | undefined {
  switch (point.kind) {
    case "contradiction":
      return [point.about];
    case "not-met":
    case "past-limit":
    case "not-known":
      return [point.check];
    case "misfit":
      return [point.misfit];
    case "opened":
      return [point.topic];
    default:
      return undefined;
  }
}

/** What stands in the way of issuing a report: every open point that decides, in the order of the ledger. */
export function standsInTheWay({ points }: Outcome): readonly InTheWay[] {
  const taken = new Map<string, number>();
  return points.map((point) => {
    const [first] = point.places;
    const base = [point.kind, ...(subjectOf(point) ?? []), ...(first === undefined ? [] : [pointer(first)])].join(" ");
    const count = (taken.get(base) ?? 0) + 1;
    taken.set(base, count);
    return { name: count === 1 ? base : `${base} (${count})`, point };
  });
}
