import type { CheckLabel, OpenPoint, Outcome, Path } from "@good-grounds/core";
import { type Installation, ITEMS, THING_KINDS } from "@good-grounds/inspection";
import { calculationWords } from "../locales/calculations-en.ts";
import { CONTRADICTION } from "../locales/contradictions-en.ts";
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

/** An open point as plain sentences with its places; with `all` none of them is left to a count. */
export function openPointWords(point: OpenPoint, context: OpenPointContext, all = false): string {
  const { follow = [] } = point;
  const same = follow.flatMap((one) => alone(one, context, all) ?? []);
  const others = follow.filter((one) => alone(one, context, all) === undefined);
  return [
    wordsOf(point, context, all),
    ...(same.length === 0 ? [] : [OPEN.sameCause(same)]),
    ...others.map((one) => openPointWords(one, context, all)),
  ].join(" ");
}

/** What stands open for the cause of another point, shortly; undefined for what has to be said in full. */
function alone(point: OpenPoint, context: OpenPointContext, all: boolean): string | undefined {
  switch (point.kind) {
    case "not-met":
    case "past-limit":
    case "not-known":
      return OPEN.alone[point.kind](checkTitle(point.check, context), placesOf(point, context, all));
    case "opened":
      return OPEN.alone.opened(point.title, placesOf(point, context, all));
    default:
      return undefined;
  }
}

function wordsOf(point: OpenPoint, context: OpenPointContext, all: boolean): string {
  const places = () => placesOf(point, context, all);
  switch (point.kind) {
    case "earthing-off":
      return OPEN.earthingOff;
    case "danger-untold":
      return OPEN.dangerUntold(places());
    case "below-the-facts":
      return OPEN.below(places(), point.follows, point.chosen);
    case "contradiction":
      return contradictionWords(point, context, all);
    case "unclassified":
      return OPEN.unclassified(places(), point.follows);
    case "not-met":
      return OPEN.notMet(checkTitle(point.check, context), places());
    case "past-limit":
      return OPEN.pastLimit(checkTitle(point.check, context), places());
    case "not-known":
      return OPEN.notKnown(checkTitle(point.check, context), places());
    case "misfit":
      // What explains them is for the inspector: the report shows of a diagnosis only what was chosen.
      return OPEN.misfit(places());
    case "opened":
      return OPEN.opened(point.title, places(), point.possible);
    case "defective-sample":
      return OPEN.defectiveSample(point.what, point.defective, point.inspected);
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

/** The title of a check, as everywhere. */
function checkTitle(check: string, { checks }: Pick<OpenPointContext, "checks">): string {
  return checks.find(({ id }) => id === check)?.title ?? calculationWords(check);
}

function placesOf({ places }: OpenPoint, { installation }: OpenPointContext, all: boolean): string {
  return placesWords(places, installation, all ? Number.POSITIVE_INFINITY : SHOWN);
}

/** What was ticked or left out stands in front, the records beside it after. */
function contradictionWords(
  { about, places }: OpenPoint & { readonly kind: "contradiction" },
  { installation }: OpenPointContext,
  all: boolean,
): string {
  const ticks = places.flatMap((path) => tickedWords(path, installation) ?? []);
  const others = places.filter((path) => tickedWords(path, installation) === undefined && path[0] !== "conclusion");
  const most = all ? Number.POSITIVE_INFINITY : SHOWN;
  return CONTRADICTION[about](OPEN.items(ticks), placesWords(others, installation, most));
}

/** What an item of the inspection asks, or what a limitation leaves out; undefined for any other place. */
function tickedWords([head, i]: Path, { inspected, limitations }: Installation): string | undefined {
  if (typeof i !== "number") return undefined;
  if (head === "limitations") return limitations[i]?.what;
  if (head !== "inspected") return undefined;
  const item = inspected[i]?.item;
  return ITEMS.find(({ id }) => id === item)?.asks;
}

/**
 * How many points stand open and the worst of them, how many choices lie below the facts, how much is left by a reason
 * alone and how much has to be investigated: one line for an inspection.
 */
export function openPointsColumn(
  { points, below, dismissed, investigate }: Outcome,
  context: OpenPointContext,
): string {
  const [worst] = points;
  return [
    worst === undefined ? OPEN.count(0) : `${OPEN.count(points.length)}: ${openPointWords(worst, context)}`,
    ...(below.length === 0 ? [] : [OPEN.belowCount(below.length)]),
    ...(dismissed.length === 0 ? [] : [OPEN.dismissedCount(dismissed.length)]),
    ...(investigate.length === 0 ? [] : [OPEN.investigateCount(investigate.length)]),
  ].join("; ");
}

/** Checks not met that only a reason answers, each with its place, its class and the reason. */
export function dismissedWords({ dismissed }: Outcome, context: OpenPointContext): readonly string[] {
  return dismissed.map(({ path, checks, chosen, reason }) => {
    const titles = checks.map((check) => checkTitle(check, context));
    return OPEN.dismissed(placesWords([path], context.installation, 1), titles, chosen, reason);
  });
}

/** What is not known and has to be investigated, each with its place and what was seen. */
export function investigateWords({ investigate }: Outcome, { installation }: OpenPointContext): readonly string[] {
  return investigate.flatMap((id) => {
    const i = installation.observations.findIndex((one) => one.id === id);
    const what = installation.observations[i]?.what ?? "";
    return i < 0 ? [] : [OPEN.investigate(placesWords([["observations", i]], installation, 1), what)];
  });
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
  if (head === "things") return { group: thingWords(path, installation) };
  return { group: placeWords(path, installation) };
}

/** A thing by its name, or by what it is and the board it is at. */
function thingWords(path: Path, { things, boards }: Installation): string {
  const thing = things.all.find((one) => one.path.join("/") === path.join("/"));
  if (thing === undefined) return path.join(", ");
  const board = boards.find(({ id }) => id === thing.board)?.name;
  const words = thing.name ?? THING_KINDS[thing.kind].noun;
  return board === undefined ? words : `${words} (${board})`;
}
