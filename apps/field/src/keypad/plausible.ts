import { parseWritten } from "@good-grounds/core";
import { KINDS, type Kind, type KindId } from "./kinds.ts";

/**
 * How a value stands out: from what this function of an instrument usually shows, or from what the other readings lead
 * to expect. It carries no figure: nobody is handed a value that would silence the question.
 */
export type Doubt = "unusual" | "more-than-expected" | "less-than-expected";

/** A value this many times what other readings lead to expect is asked about; honest readings seldom differ so much. */
const FAR = 4;

/** Factors by which a point slips. */
const SLIPS = [0.1, 10, 0.01, 100, 0.001, 1000];

/**
 * Whether a reading may have slipped by a factor of ten, or is not what this function of an instrument usually shows.
 * It is only ever asked about. `expected` is what other readings lead to expect, in the coherent unit;
 * `within` what this reading usually lies between, where that is not what the function usually shows.
 */
export function doubtAbout(
  shown: string,
  id: KindId,
  expected: number | undefined,
  within: readonly [low: number, high: number] = KINDS[id].usual,
): Doubt | undefined {
  const kind: Kind = KINDS[id];
  const written = parseWritten(shown, kind.unit);
  if ("code" in written || written.bound !== "exact") return undefined;
  const { value } = written;
  const near = (other: number) => expected === undefined || isNear(other, expected);
  const usual = (other: number) => other >= within[0] && other <= within[1];
  if (usual(value) && near(value)) return undefined;
  if (expected === undefined || near(value)) return "unusual";
  // Far from what was expected, but no slip of the point explains it: that is for the checks to judge.
  const slipped = SLIPS.some((factor) => usual(value * factor) && near(value * factor));
  if (usual(value) && !slipped) return undefined;
  return value > expected ? "more-than-expected" : "less-than-expected";
}

function isNear(value: number, expected: number): boolean {
  return value <= expected * FAR && value >= expected / FAR;
}
