import {
  assumed,
  type Compared,
  type Evidence,
  matter,
  measured,
  parseAccuracy,
  parseWritten,
  quantity,
  Reckoner,
  seenBetween,
  TERM,
  type Written,
} from "@good-grounds/core";
import type { Chance } from "../../examples/simulate/chance.ts";

const RECKON = new Reckoner(true);
const QUESTION = matter("invented", "an invented comparison");
const ACCURACIES = ["±(2 % + 2 digits)", "±(5 % + 3 digits)", "2 %", "±(10 % + 5 digits)", null] as const;
const READ_AS = [TERM.measuredR1R2, TERM.measuredZs, TERM.ringLine] as const;

/** A comparison of invented arithmetic on invented readings, with its limit within reach of the errors. */
export function randomComparison(chance: Chance): Compared {
  const leaves = Array.from({ length: 2 + whole(chance, 4) }, () => leaf(chance));
  const value = tree(chance, leaves, 1 + whole(chance, 3));
  const spread = Math.max(1e-6, (value.high - value.low) / 2, Math.abs(value.value) * 0.05);
  const limit = assumed(TERM.resistance, value.value + spread * chance.between(-0.6, 0.6), "invented");
  return chance.uniform() < 0.5 ? RECKON.atMost(QUESTION, value, limit) : RECKON.atLeast(QUESTION, value, limit);
}

function leaf(chance: Chance): Evidence<"ohm"> {
  if (chance.uniform() < 0.15) {
    const low = chance.between(0.2, 2);
    return seenBetween(
      TERM.resistance,
      quantity(low, "ohm"),
      quantity(low * chance.between(1, 1.3), "ohm"),
      "invented",
      [],
    );
  }
  const term = READ_AS[whole(chance, READ_AS.length)] ?? TERM.measuredZs;
  const text = `${chance.between(0.2, 3).toFixed(2)} Ω`;
  const stated = ACCURACIES[whole(chance, ACCURACIES.length)] ?? null;
  const accuracy = stated === null ? null : (parseAccuracy(stated) ?? null);
  const instrument = chance.uniform() < 0.7 ? "one" : "two";
  return measured(term, parseWritten(text, "ohm") as Written<"ohm">, [], accuracy, { instrument });
}

/** Nested arithmetic; a part may stand in several places. */
function tree(chance: Chance, leaves: readonly Evidence<"ohm">[], depth: number): Evidence<"ohm"> {
  const pick = () => leaves[whole(chance, leaves.length)] as Evidence<"ohm">;
  if (depth === 0) return pick();
  const one = tree(chance, leaves, depth - 1);
  const other = chance.uniform() < 0.5 ? pick() : tree(chance, leaves, depth - 1);
  const { resistance, temperatureRise: ratio } = TERM;
  switch (whole(chance, 7)) {
    case 0:
      return RECKON.sum(resistance, one, other);
    case 1:
      return RECKON.difference(resistance, one, other);
    case 2:
      return RECKON.product(resistance, one, RECKON.quotient(ratio, other, pick()));
    case 3:
      return RECKON.inParallel(resistance, [one, other]);
    case 4:
      return RECKON.largest(resistance, one, other);
    case 5:
      return RECKON.smallest(resistance, one, other);
    default:
      return RECKON.product(resistance, one, RECKON.lessOne(ratio, assumed(ratio, 1.6, "invented", [1.5, 1.7])));
  }
}

function whole(chance: Chance, below: number): number {
  return Math.floor(chance.uniform() * below);
}
