import type { AnyField } from "../../keypad/fields.ts";
import type { Spot } from "../../keypad/spot.ts";
import { READINGS } from "../../words/readings.ts";

/** The tests of one RCD, whether a circuit's own or a board's. */
export function rcdFields({ path, inner = [] }: Spot, place: string): readonly AnyField[] {
  // A board's device is a list member with places of its own; a circuit's own lies within the circuit's one value.
  const spot = (name: string): Spot =>
    inner.length === 0 ? { path: `${path}/readings/${name}` } : { path, inner: [...inner, "readings", name] };
  const about = [{ place, check: "rcd-time" }];
  return [
    { spot: spot("atRated"), kind: "time", label: READINGS.atRated, hint: READINGS.atRatedHint, about },
    { spot: spot("atFive"), kind: "time", label: READINGS.atFive, optional: true, about: [] },
    { spot: spot("button"), label: READINGS.button, words: READINGS.words.button },
  ];
}
