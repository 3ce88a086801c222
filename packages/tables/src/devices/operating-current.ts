import {
  type DeviceStandard,
  type DeviceType,
  type NotKnown,
  type Published,
  published,
  type Source,
  TERM,
} from "@good-grounds/core";
import { notTabulated } from "../not-tabulated.ts";
import { source } from "../sources.ts";
import { BREAKER_RATINGS, breakerMultiple, breakerType, SHORTEST_BREAKER_TIME } from "./breaker-types.ts";
import { deviceWords, type MarkedDevice } from "./device.ts";
import { FUSES, type FuseRow, fuseRows } from "./fuses/index.ts";

type Answer = Published<"ampere"> | NotKnown<"ampere">;

/** Voltage of the fault loop the printed impedances rest on, V: 230 × 0.95. */
const LOOP_VOLTAGE = 218.5;

/** Ratings and times come from files; what is kept must not grow with hostile ones. */
const MOST_ANSWERS = 10_000;

type ByTime = Map<number, Answer>;
type ByType = Map<DeviceType | null, Map<number, ByTime>>;
const ANSWERS = new Map<DeviceStandard, ByType>();
let kept = 0;

/**
 * The current in A that operates a device within a time in s.
 *
 * Circuit-breakers: the multiple at which their type trips at once, for every rating from 0.5 A to 125 A and every time
 * from 0.1 s. Fuses: the known points at 0.4 s and 5 s; for a time between or beyond them the nearest shorter point,
 * since a fuse that operates within the shorter time also operates within the longer one. What has no figure (shorter
 * times, ratings without a row, devices whose standard sets no multiple) is not tabulated.
 */
export function operatingCurrent(device: MarkedDevice, seconds: number): Answer {
  const { standard, type, rated } = device;
  const held = ANSWERS.get(standard)?.get(type)?.get(rated)?.get(seconds);
  if (held !== undefined) return held;
  const answer = find(device, seconds);
  if (kept < MOST_ANSWERS) keep(device, seconds, answer);
  return answer;
}

function keep({ standard, type, rated }: MarkedDevice, seconds: number, answer: Answer): void {
  const byType: ByType = ANSWERS.get(standard) ?? new Map();
  const byRating = byType.get(type) ?? new Map<number, ByTime>();
  const byTime: ByTime = byRating.get(rated) ?? new Map();
  ANSWERS.set(standard, byType.set(type, byRating.set(rated, byTime.set(seconds, answer))));
  kept += 1;
}

function find(device: MarkedDevice, seconds: number): Answer {
  const row = `${deviceWords(device)}, within ${seconds} s`;
  const breaker = breakerType(device.standard, device.type);
  if (breaker !== undefined) {
    const { least, greatest } = BREAKER_RATINGS;
    if (!(seconds >= SHORTEST_BREAKER_TIME && device.rated >= least && device.rated <= greatest))
      return notTabulated(TERM.operatingCurrent, "the table of breaker types", row);
    const { multiple, source: from } = breakerMultiple(breaker, seconds);
    return published(TERM.operatingCurrent, multiple * device.rated, multiplied(from), `${row}: ${multiple} × In`);
  }
  if (FUSES.has(device.standard)) return ofFuse(fuseRows(device), device, seconds, row);
  return notTabulated(TERM.operatingCurrent, "the device tables", `${row}; the maker's characteristic is needed`);
}

/** The source of a current worked out from a type's multiple. */
function multiplied(from: Source): Source {
  const { work, edition, basis } = from;
  return source(work, edition, basis === "memory" ? "memory" : "derived", {
    formula: "Ia = multiple × In",
    ...doubtOf(from),
  });
}

function ofFuse(rows: readonly FuseRow[], device: MarkedDevice, seconds: number, words: string): Answer {
  let best: FuseRow | undefined;
  for (const row of rows) {
    if (row.rated !== device.rated || row.seconds > seconds) continue;
    if (best === undefined || row.seconds > best.seconds) best = row;
  }
  if (best === undefined || !(best.seconds <= seconds))
    return notTabulated(TERM.operatingCurrent, `the table of ${device.standard}`, words);
  return published(TERM.operatingCurrent, fuseCurrent(best), pointSource(best, seconds), words);
}

/** The current of a fuse's known point in A; from the printed impedance where no current is printed. */
export function fuseCurrent({ operating, printedZs }: FuseRow): number {
  return operating ?? LOOP_VOLTAGE / printedZs;
}

/** The source of a fuse's point, with the reckoning that leads to the current asked for. Memory stays memory. */
function pointSource(row: FuseRow, seconds: number): Source {
  const { work, edition, basis, formula } = row.source;
  const back = row.operating === null ? "Ia = 218.5 V ÷ printed Zs" : formula;
  if (row.seconds === seconds)
    return source(work, edition, basis, { ...(back === undefined ? {} : { formula: back }), ...doubtOf(row.source) });
  const longer = `a fuse that operates within ${row.seconds} s also operates within ${seconds} s`;
  return source(work, edition, basis === "memory" ? "memory" : "derived", {
    formula: back === undefined ? longer : `${back}; ${longer}`,
    ...doubtOf(row.source),
  });
}

function doubtOf({ doubt }: Source): { readonly doubt?: string } {
  return doubt === undefined ? {} : { doubt };
}
