import { type Evidence, expected, isKnown, type Reckoner, type Unit } from "@good-grounds/core";

/** A computed quantity of which it is expected, and not shown, that it is the one to compare with. `why` says why it is. */
export function asExpected<U extends Unit>(computed: Evidence<U>, why: string, reckon: Reckoner): Evidence<U> {
  if (!isKnown(computed)) return computed;
  const { term, value, low, high } = computed;
  return reckon.lookedUp(term, expected(term, value, why, [low, high]), computed);
}
