import type { ChangeNote, ChangeSilence, ChangeVerdict, ReadingChange } from "@good-grounds/core";
import { combined, type Doubted, normalCdf, sharesGain, standardOf } from "@good-grounds/measurement";
import { chanceAtMost } from "../../uncertainty/sum-of-errors.ts";
import type { Normalised } from "./normalise.ts";

/** By default a change is called one where readings of something unchanged would differ as much once in a thousand. */
export const LEVEL = 0.001;

type Named = Pick<ReadingChange, "reading" | "about">;

/** Resistances and impedances, compared in ohms. */
export function differenceOf(named: Named, past: Normalised, now: Normalised, level: number): ReadingChange {
  const open = unless(named, past, now);
  if (open !== undefined) return open;
  const [a, b] = [past.doubted as Doubted, now.doubted as Doubted];
  const change = combined(1, b, -1, a);
  const deviations = [...change.errors.values()];
  return decided(named, past, now, "difference", change, standardOf(change), level, (amount) =>
    chanceAtMost(-Math.abs(amount), deviations),
  );
}

/**
 * Quantities spread over decades, compared as logarithms of their ratio. `surroundings` is the standard deviation of
 * ln R from one visit to another with nothing changed but moisture, warmth or season.
 */
export function ratioOf(
  named: Named,
  past: Normalised,
  now: Normalised,
  surroundings: number,
  level: number,
): ReadingChange {
  const open = unless(named, past, now);
  if (open !== undefined) return open;
  const [a, b] = [past.doubted as Doubted, now.doubted as Doubted];
  const [ra, rb] = [aboveNothing(a, past), aboveNothing(b, now)];
  const change = combined(1 / rb, b, -1 / ra, a);
  const standard = Math.hypot(standardOf(change), surroundings, surroundings);
  const amount = { ...change, value: Math.log(rb / ra) };
  const noted = { ...now, notes: [...now.notes, "surroundings" as const] };
  return decided(named, past, noted, "ratio", amount, standard, level, (value) =>
    normalCdf(-Math.abs(value) / standard),
  );
}

/** A display of nothing says less than half a digit, and has no logarithm below that. */
function aboveNothing({ value }: Doubted, { shown }: Normalised): number {
  const least = shown.kind === "measured" && shown.detail.resolution > 0 ? shown.detail.resolution / 2 : Number.EPSILON;
  return Math.max(value, least);
}

/** A comparison that cannot be made. */
export function silent(named: Named, past: Normalised, now: Normalised, why: ChangeSilence): ReadingChange {
  return {
    ...named,
    past: past.shown,
    now: now.shown,
    change: "cannot-say",
    why,
    scale: "difference",
    amount: Number.NaN,
    standard: Number.NaN,
    chance: Number.NaN,
    notes: notesOf(past, now),
  };
}

function unless(named: Named, past: Normalised, now: Normalised): ReadingChange | undefined {
  if (past.doubted !== undefined && now.doubted !== undefined) return undefined;
  const why = past.doubted !== undefined ? "not-taken-now" : now.doubted !== undefined ? "not-taken-then" : "not-taken";
  return silent(named, past, now, why);
}

function decided(
  named: Named,
  past: Normalised,
  now: Normalised,
  scale: ReadingChange["scale"],
  { value: amount, open }: Doubted,
  standard: number,
  level: number,
  beyond: (amount: number) => number,
): ReadingChange {
  const chance = Math.min(1, 2 * beyond(amount));
  // Where a display has ended the true change may lie further out on that side: only what it is at least can be told.
  const told = chance < level && (open === 0 || Math.sign(amount) === open);
  const change: ChangeVerdict = told ? (amount > 0 ? "up" : "down") : open === 0 ? "within" : "cannot-say";
  return {
    ...named,
    past: past.shown,
    now: now.shown,
    change,
    why: change === "cannot-say" ? "display-ended" : null,
    scale,
    amount,
    standard,
    chance,
    notes: notesOf(past, now),
  };
}

function notesOf(past: Normalised, now: Normalised): readonly ChangeNote[] {
  const shared =
    past.doubted !== undefined && now.doubted !== undefined && sharesGain(past.doubted, now.doubted)
      ? (["same-instrument"] as const)
      : [];
  return [...new Set([...past.notes, ...now.notes, ...shared])].sort();
}
