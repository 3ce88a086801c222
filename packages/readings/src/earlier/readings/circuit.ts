import { isAtOrigin } from "@good-grounds/computations";
import {
  type ComparedReading,
  type Evidence,
  isKnown,
  isKnownFact,
  type Known,
  type ReadingChange,
  type Reckoner,
} from "@good-grounds/core";
import type { Board, Circuit } from "@good-grounds/inspection";
import type { DatedInstallation } from "../dated.ts";
import { differenceOf, ratioOf, silent } from "./change.ts";
import type { JobDoubt } from "./doubt.ts";
import { asRead, at20, circuitPartAt20 } from "./normalise.ts";

/** One side of a comparison. */
export interface Job {
  readonly installation: DatedInstallation;
  readonly doubt: JobDoubt;
}

/**
 * How far ln of an insulation resistance moves from visit to visit with nothing changed: it halves with about every
 * 10 K and with moisture, so that a factor of 2 either way is ordinary. Common practice; a standard deviation.
 */
export const INSULATION_MOVES = 0.6;

const CONTINUITY = ["r1", "rn", "r2", "r1r2", "r2Only"] as const;
const INSULATION = ["insulationLiveLive", "insulationLiveEarth"] as const;

/** Every reading of a circuit beside its earlier self. What was recorded in neither is left out. */
export function circuitChanges(
  past: Circuit,
  now: Circuit,
  jobs: { readonly past: Job; readonly now: Job; readonly boards: ReadonlyMap<Board, Board> },
  level: number,
  reckon: Reckoner,
): readonly ReadingChange[] {
  const [a, b] = [past.readings, now.readings];
  const changes: ReadingChange[] = [];
  const named = (reading: ComparedReading) => ({ reading, about: "" });
  for (const name of CONTINUITY) {
    if (isAbsent(a[name]) && isAbsent(b[name])) continue;
    const before = at20(a[name], a.temperature, jobs.past.doubt, reckon);
    const after = at20(b[name], b.temperature, jobs.now.doubt, reckon);
    changes.push(differenceOf(named(name), before, after, level));
  }
  for (const name of INSULATION) {
    if (isAbsent(a[name]) && isAbsent(b[name])) continue;
    const [before, after] = [asRead(a[name], jobs.past.doubt), asRead(b[name], jobs.now.doubt)];
    const [u, v] = [a.insulationVoltage, b.insulationVoltage];
    const differ = isKnownFact(u) && isKnownFact(v) && u.word !== v.word;
    changes.push(
      differ && isKnown(a[name]) && isKnown(b[name])
        ? silent(named(name), before, after, "test-voltages-differ")
        : ratioOf(named(name), before, after, INSULATION_MOVES, level),
    );
  }
  if (!isAbsent(a.zs) || !isAbsent(b.zs)) changes.push(loopChange(past, now, jobs, level, reckon));
  return changes;
}

/** Zs without the loop before the circuit; where that is not known on both sides, Zs as a whole can at least be unchanged. */
function loopChange(
  past: Circuit,
  now: Circuit,
  jobs: { readonly past: Job; readonly now: Job; readonly boards: ReadonlyMap<Board, Board> },
  level: number,
  reckon: Reckoner,
): ReadingChange {
  const named = { reading: "zs", about: "" } as const;
  const [za, zb] = [past.readings.zs, now.readings.zs];
  const before = loopsBefore(past, now, jobs);
  if (isKnown(za) && isKnown(zb) && before !== undefined) {
    return differenceOf(
      named,
      circuitPartAt20(za, before[0], past.readings.temperature, jobs.past.doubt, reckon),
      circuitPartAt20(zb, before[1], now.readings.temperature, jobs.now.doubt, reckon),
      level,
    );
  }
  const [whole, wholeNow] = [asRead(za, jobs.past.doubt), asRead(zb, jobs.now.doubt)];
  const change = differenceOf(named, whole, { ...wholeNow, notes: [...wholeNow.notes, "as-a-whole"] }, level);
  return change.change === "up" || change.change === "down"
    ? silent(named, whole, wholeNow, "supply-not-known")
    : change;
}

/** The loop before the circuit on both sides, of the same place: at the board, else at the origin. */
function loopsBefore(
  past: Circuit,
  now: Circuit,
  { boards, past: a, now: b }: { readonly past: Job; readonly now: Job; readonly boards: ReadonlyMap<Board, Board> },
) {
  const [za, zb] = [past.board.zdb, now.board.zdb];
  const sameBoard = boards.get(past.board) === now.board;
  if (sameBoard && isBounded(za) && isBounded(zb)) return [za, zb] as const;
  const [oa, ob] = [a.installation.supply.ze, b.installation.supply.ze];
  const atOrigin = isAtOrigin(past.board) && isAtOrigin(now.board);
  return atOrigin && isBounded(oa) && isBounded(ob) ? ([oa, ob] as const) : undefined;
}

/** Known, and not beyond the end of a display: what may be anything cannot be taken out of something else. */
function isBounded(reading: Evidence<"ohm">): reading is Known<"ohm"> {
  return isKnown(reading) && Number.isFinite(reading.high);
}

export function isAbsent(reading: Evidence<"ohm">): boolean {
  return reading.kind === "not-known" && reading.detail.silence === "absent";
}
