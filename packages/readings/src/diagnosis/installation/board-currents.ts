import { isAtOrigin } from "@good-grounds/computations";
import { isKnownFact } from "@good-grounds/core";
import type { Board, Supply } from "@good-grounds/inspection";
import { type Reading, readingOf, wholeDeviation } from "./fitted-reading.ts";
import { logNormal } from "./line-up.ts";

/** Prospective fault currents of the origin and of a board beside it, as the loops they come from. */
export interface CurrentsRead {
  readonly origin: Reading;
  readonly board: Reading;
  /** The loop that the current at the board comes from, Ω. */
  readonly loop: number;
  /** By how much that is the longer one, Ω, and the standard deviation of that. */
  readonly off: number;
  readonly deviation: number;
  /** What the current at the board is without anything between, A, and its standard deviation. */
  readonly expected: { readonly value: number; readonly deviation: number };
}

/** Both currents are worked out from one voltage: which one does not matter beside what loops are out by. V */
const VOLTS = 230;

/** What digits and contacts of the loop test behind a fault current are out by, Ω, as a standard deviation. */
const OF_A_LOOP = 0.02;

/** Undefined where one was not read, or where they need not be of the same kind. */
export function currentsOf(supply: Supply, board: Board): CurrentsRead | undefined {
  if (!isAtOrigin(board)) return undefined;
  const [origin, here] = [readingOf(supply.faultCurrent), readingOf(board.faultCurrent)];
  if (origin === undefined || here === undefined || !(origin.value > 0) || !(here.value > 0)) return undefined;
  const [single, one, other] = [supply.phases, supply.faultCurrentMethod, board.faultCurrentMethod];
  const alike = isKnownFact(one) && isKnownFact(other) && one.word === other.word;
  if (!alike && !(isKnownFact(single) && single.word === "1")) return undefined;
  const [before, behind] = [VOLTS / origin.value, VOLTS / here.value];
  const doubt = (reading: Reading, loop: number) =>
    Math.hypot((wholeDeviation(reading) / reading.value) * loop, OF_A_LOOP);
  const deviation = Math.hypot(doubt(origin, before), doubt(here, behind));
  return {
    origin,
    board: here,
    loop: behind,
    off: behind - before,
    deviation,
    expected: { value: origin.value, deviation: (deviation / before) * origin.value },
  };
}

/**
 * Logarithm of the density of the currents with so many ohms in line or neutral between them. A current that is the
 * higher one at the board says nothing: it is the larger of two.
 */
export function currentsWith(currents: CurrentsRead | undefined, ohms: number, deviation = 0): number {
  if (currents === undefined) return 0;
  return logNormal(Math.max(0, currents.off), ohms, Math.hypot(currents.deviation, deviation));
}
