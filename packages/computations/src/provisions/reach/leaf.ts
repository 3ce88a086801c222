import type { Path, Quantity, Seen, Term, Unit } from "@good-grounds/core";

const NOTHING: readonly [] = Object.freeze([]);

/** A quantity taken from the drawing of a scene, with the band its tolerance leaves. */
export function fromScene<U extends Unit>(
  term: Term<U>,
  value: number,
  low: number,
  high: number,
  path: Path,
): Seen<U> {
  return Object.freeze({
    kind: "seen",
    term,
    value: value as Quantity<U>,
    low: low as Quantity<U>,
    high: high as Quantity<U>,
    detail: Object.freeze({ path, text: `${Math.round(value * 1000) / 1000} m` }),
    from: NOTHING,
  });
}
