import { type Fact, fact, factNotKnown, isKnownFact, matter } from "@good-grounds/core";
import type { Board, Installation, ResidualDevice } from "@good-grounds/inspection";
import type { SpokenOf } from "../../spoken-of/index.ts";
import { type RecordedProperty, worded } from "../property.ts";

const AHEAD = matter("delayed-rcd-ahead", "a time-delayed RCD in an insulating enclosure before the board");

/** Where the first RCD stands on the way from the supply to the board spoken of. */
interface FirstRcd {
  readonly board: Board;
  /** What it is in a board ahead of the one spoken of; none where it stands in that board itself. */
  readonly ahead: readonly ResidualDevice[];
}

/** The enclosure of the board in which the first RCD stands, seen from the supply. */
export const firstRcdEnclosure: RecordedProperty = worded(
  "first-rcd-enclosure",
  "enclosure of the first RCD",
  ["metal", "non-combustible", "combustible", "wood-backed"],
  (spoken) => {
    const first = firstRcd(spoken);
    return first === undefined ? [] : [[first.board.path, first.board.enclosure]];
  },
);

/**
 * Whether a time-delayed RCD in an insulating enclosure stands ahead of the board spoken of: no where the first RCD is in
 * that board, has no delay or stands in metal.
 */
export const delayedRcdAhead: RecordedProperty = Object.freeze({
  id: AHEAD.id,
  name: AHEAD.name,
  values: ["yes", "no"],
  read(spoken: SpokenOf) {
    const first = firstRcd(spoken);
    if (first === undefined) return [];
    const leaf = aheadOf(first);
    return [{ of: first.board.path, leaf, values: isKnownFact(leaf) ? [leaf.word ? "yes" : "no"] : [] }];
  },
});

function aheadOf({ board, ahead }: FirstRcd): Fact<boolean> {
  const { path, enclosure, name } = board;
  if (ahead.length === 0) return fact(AHEAD, false, [...path, "rcds"], `the first RCD is in ${name}`, "seen");
  const isDelayed = ahead.some(({ delay }) => isKnownFact(delay) && delay.word === "S");
  const isAtOnce = ahead.every(({ delay }) => isKnownFact(delay) && delay.word !== "S");
  if (isAtOnce) return fact(AHEAD, false, [...path, "rcds"], `the first RCD, in ${name}, has no delay`, "seen");
  if (isKnownFact(enclosure) && enclosure.word === "metal")
    return fact(AHEAD, false, [...path, "enclosure"], `the first RCD is in ${name}, which is metal`, "seen");
  const isInsulating = isKnownFact(enclosure) && enclosure.word === "combustible";
  return isDelayed && isInsulating
    ? fact(AHEAD, true, [...path, "rcds"], `in ${name}`, "seen")
    : factNotKnown(AHEAD, [...path, "enclosure"]);
}

/** Undefined where there is no RCD on the way, or nobody recorded the way or what stands on it. */
function firstRcd({ installation, board, place }: SpokenOf): FirstRcd | undefined {
  const spoken = board ?? (place.board === undefined ? onlyAtOrigin(installation) : undefined);
  if (spoken === undefined) return undefined;
  const way: Board[] = [];
  for (let at: Board | undefined = spoken; at !== undefined; at = at.feeder?.board) way.unshift(at);
  if (!isAtOrigin(way[0])) return undefined;
  for (const [i, one] of way.entries()) {
    const feeding = way[i + 1]?.feeder;
    if (feeding === undefined) return hasRcd(one) ? { board: one, ahead: [] } : undefined;
    const { present, devices } = feeding.residual;
    if (!isKnownFact(present)) return undefined;
    if (devices.length > 0) return { board: one, ahead: devices };
  }
  return undefined;
}

function onlyAtOrigin({ boards }: Installation): Board | undefined {
  const [one, ...others] = boards.filter(isAtOrigin);
  return others.length === 0 ? one : undefined;
}

function isAtOrigin(board: Board | undefined): boolean {
  return board !== undefined && isKnownFact(board.atOrigin) && board.atOrigin.word;
}

function hasRcd({ rcds, circuits }: Board): boolean {
  return rcds.length > 0 || circuits.some(({ residual }) => residual.devices.length > 0);
}
