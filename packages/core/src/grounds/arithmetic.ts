import type { Unit } from "../quantity/unit.ts";
import type { Verdict } from "../verdict/verdict.ts";
import type { Evidence } from "./evidence.ts";

/** Relative slack of a comparison, so that decimals as typed meet their limit when they equal it. */
export const TIE_SLACK = 1e-9;

/** What lies above a lower limit as a part of the value, up to 1; what is short of it as a part of the limit. */
export function atLeastMargin(value: number, limit: number): number {
  return value >= limit ? 1 - limit / value : value / limit - 1;
}

/** 0 × ∞ is 0 here: nothing flows, however long. An unknown times nothing stays unknown. */
export function times(a: number, b: number): number {
  if (a === 0) return Number.isNaN(b) ? b : 0;
  return b === 0 && !Number.isNaN(a) ? 0 : a * b;
}

/** Nothing over nothing is nothing; an unknown over nothing stays unknown. */
export function over(a: number, b: number): number {
  if (b !== 0) return a / b;
  return a === 0 ? 0 : a * Number.POSITIVE_INFINITY;
}

/** A resistance, a time or an energy as a magnitude; an unknown stays unknown. */
export function notBelowZero(value: number): number {
  return Math.max(value, 0);
}

/** The least and the greatest square of anything in a band. */
export function squared({ low, high }: Evidence<Unit>): readonly [number, number] {
  if (low >= 0) return [low ** 2, high ** 2];
  return [high <= 0 ? high ** 2 : 0, Math.max(low ** 2, high ** 2)];
}

/**
 * The verdict on "a is at most b" when a lies between `worst` and `best` and the limit between `tight` and `loose`.
 */
export function rank(worst: number, tight: number, best: number, loose: number): Verdict {
  if (worst <= tight + slack(tight)) return "met";
  if (best > loose + slack(loose)) return "not-met";
  return "too-near";
}

export function slack(limit: number): number {
  return Number.isFinite(limit) ? Math.abs(limit) * TIE_SLACK : 0;
}
