import { type NotKnown, notKnown, type Term, type Unit } from "@good-grounds/core";

/** The answer of a look-up for which the table has no row: a quantity that is not known, with what was asked for. */
export function notTabulated<U extends Unit>(term: Term<U>, table: string, asked: string): NotKnown<U> {
  return notKnown(term, [], "not-tabulated", `no figure in ${table} for ${asked}`);
}
