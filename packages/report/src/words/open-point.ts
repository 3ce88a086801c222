import type { CheckLabel, OpenPoint, Outcome, Path } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { calculationWords } from "../locales/calculations-en.ts";
import { OPEN } from "../locales/outcome-en.ts";
import { numberOf } from "./observation-number.ts";
import { placeWords } from "./place.ts";

/** What the words of an open point are made from. */
export interface OpenPointContext {
  readonly installation: Installation;
  readonly checks: readonly Pick<CheckLabel, "id" | "title">[];
}

/** Places named of a point before the rest are counted; all of them where `all`. */
const SHOWN = 6;

/** An open point as a plain sentence with its places; with `all` none of them is left to a count. */
export function openPointWords(point: OpenPoint, context: OpenPointContext, all = false): string {
  const places = () => placesWords(point.places, context.installation, all ? Number.POSITIVE_INFINITY : SHOWN);
  const title = (check: string) => context.checks.find(({ id }) => id === check)?.title ?? calculationWords(check);
  switch (point.kind) {
    case "earthing-off":
      return OPEN.earthingOff;
    case "below-the-facts":
      return OPEN.below(places(), point.follows, point.chosen);
    case "contradiction":
      return OPEN.contradiction(places());
    case "unclassified":
      return OPEN.unclassified(places(), point.follows);
    case "not-met":
      return OPEN.notMet(title(point.check), places());
    case "past-limit":
      return OPEN.pastLimit(title(point.check), places());
    case "opened":
      return OPEN.opened(point.title, places(), point.possible);
    case "nothing-tested":
      return OPEN.nothingTested;
    case "not-tested":
      return OPEN.notTested(point.tests, places());
    case "nothing-inspected":
      return OPEN.nothingInspected;
    case "not-inspected":
      return OPEN.notInspected[point.answered](point.items.length);
  }
}

/** How many points stand open and the worst of them, and how many choices lie below the facts: one line for an inspection. */
export function openPointsColumn({ points, below }: Outcome, context: OpenPointContext): string {
  const [worst] = points;
  const open = worst === undefined ? OPEN.count(0) : `${OPEN.count(points.length)}: ${openPointWords(worst, context)}`;
  return below.length === 0 ? open : `${open}; ${OPEN.belowCount(below.length)}`;
}

/** Places in words; circuits of one board stand together. */
function placesWords(paths: readonly Path[], installation: Installation, most: number): string {
  const shown = paths.slice(0, most);
  const groups = new Map<string, string[]>();
  for (const path of shown) {
    const { group, member } = placed(path, installation);
    groups.set(group, [...(groups.get(group) ?? []), ...(member === undefined ? [] : [member])]);
  }
  const words = [...groups].map(([group, members]) =>
    members.length === 0 ? group : OPEN.circuits(group, members, 0),
  );
  return OPEN.places(words, paths.length - shown.length);
}

function placed(path: Path, installation: Installation): { readonly group: string; readonly member?: string } {
  const [head, i, kind, j] = path;
  if (head === "observations" && typeof i === "number") {
    const one = installation.observations[i];
    const number = one === undefined ? undefined : numberOf(one.id, installation);
    return {
      group:
        one?.place === undefined || number === undefined
          ? placeWords(path, installation)
          : OPEN.observation(one.place, number),
    };
  }
  if (head === "boards" && typeof i === "number" && kind === "circuits" && typeof j === "number" && path.length === 4) {
    const board = installation.boards[i];
    return { group: board?.name || `board ${i + 1}`, member: board?.circuits[j]?.designation || String(j + 1) };
  }
  return { group: placeWords(path, installation) };
}
