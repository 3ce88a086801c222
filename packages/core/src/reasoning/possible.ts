import type { Compiled } from "./compile.ts";
import { CANNOT_BE, everyCell, isContradicted, whereItCanBe, withdrawalsOf } from "./contradiction.ts";
import { SEVERITIES, type Severity } from "./subject.ts";
import { bitsOf, possibleLeaves } from "./survey.ts";

/**
 * Bit set of the leaves that a function of the subject can still take: the union over every completion that can be.
 * Where what is stated contradicts itself no completion can be, and the statements are taken as they stand.
 */
export function possibleOf(compiled: Compiled, node: number, masks: readonly number[]): number {
  const canBe = possibleLeaves(compiled, whereItCanBe(compiled, node), masks) & ~(1 << CANNOT_BE);
  return canBe === 0 ? possibleLeaves(compiled, node, masks) : canBe;
}

/**
 * Bit set of the severities still possible. Where statements contradict each other: what they give as they stand and what
 * each withdrawal that ends the contradiction gives, without anything below the most that one of these shows for certain.
 * So a statement about something nothing was said of never lowers what stands, whether or not it contradicts the rest.
 */
export function possibleSeverities(compiled: Compiled, masks: readonly number[]): number {
  const asStated = possibleOf(compiled, compiled.root, masks);
  if (!isContradicted(compiled, masks)) return asStated;
  const readings = [
    asStated,
    ...withdrawalsOf(compiled, masks).map((one) => possibleOf(compiled, compiled.root, one.masks)),
  ];
  const floor = Math.max(...readings.map(lowestBit));
  return readings.reduce((union, one) => union | one, 0) & ~(floor - 1);
}

/** Bit set of the severities still possible under any position on any contested point. */
export function severitiesUnderAnyView(compiled: Compiled, masks: readonly number[]): number {
  const points = compiled.variables.flatMap(({ kind }, i) => (kind === "point" ? [i] : []));
  const open = masks.map((mask, i) => (points.includes(i) ? everyCell(compiled, i) : mask));
  // Without a contradiction the union over all positions is one pass. With one, what stands is found view by view.
  return isContradicted(compiled, masks) ? viewByView(compiled, open, points) : possibleSeverities(compiled, open);
}

function viewByView(compiled: Compiled, masks: readonly number[], [point, ...rest]: readonly number[]): number {
  if (point === undefined) return possibleSeverities(compiled, masks);
  return bitsOf(masks[point] as number).reduce(
    (union, position) => union | viewByView(compiled, masks.with(point, 1 << position), rest),
    0,
  );
}

function lowestBit(bits: number): number {
  return bits & -bits;
}

/** The severities of a bit set, from least to most. */
export function severitiesOf(leaves: number): readonly Severity[] {
  return bitsOf(leaves).map((leaf) => SEVERITIES[leaf] as Severity);
}
