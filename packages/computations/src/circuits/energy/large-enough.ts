import { type Compared, type Evidence, isOpen, type Matter, type Reckoner, TERM } from "@good-grounds/core";
import type { OvercurrentEnergy } from "./energy-marks.ts";

/** A conductor held against energies: its size in mm² and its factor k. */
export interface Withstanding {
  readonly area: Evidence<"square-millimetre">;
  readonly k: Evidence<"adiabatic-k">;
}

/** The size an energy asks for, √(I²t) ÷ k, mm². */
export function sizeFor(
  energy: Evidence<"ampere-squared-second">,
  k: Evidence<"adiabatic-k">,
  reckon: Reckoner,
): Evidence<"square-millimetre"> {
  return reckon.quotient(TERM.requiredArea, reckon.root(TERM.rootLetThrough, energy), k);
}

/**
 * Whether a conductor is large enough for the energy an overcurrent device lets through. What is shown by published
 * figures decides where it can; else what is to be expected, with that grade. An energy that is only an upper bound
 * never shows a conductor too small. `required` makes of the size of the conductor that carries the fault the one asked
 * for, where that is another.
 */
export function largeEnough(
  matter: Matter,
  { area, k }: Withstanding,
  { shown, expected }: OvercurrentEnergy,
  reckon: Reckoner,
  required: (size: Evidence<"square-millimetre">) => Evidence<"square-millimetre"> = (size) => size,
): Compared {
  const proven = reckon.atLeast(matter, area, required(sizeFor(shown, k, reckon)));
  if (expected === undefined || !isOpen(proven.verdict)) return proven;
  const likely = reckon.atLeast(matter, area, required(sizeFor(expected, k, reckon)), "expected");
  return proven.verdict === "not-known" || !isOpen(likely.verdict) ? likely : proven;
}
