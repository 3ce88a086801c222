import { CIRCUIT } from "../../words/installation.ts";

/** Words in an order of their own. */
export const pick = <T extends string>(words: Readonly<Record<T, string>>, order: readonly T[]) =>
  Object.fromEntries(order.map((word) => [word, words[word]]));

export const YES = { yes: CIRCUIT.yes, no: CIRCUIT.no };
