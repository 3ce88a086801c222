import type { Unit } from "../quantity/unit.ts";

/** What it takes to find a fact out, from least to most. `beyond`: outside what an inspection usually agrees to do. */
export const EFFORTS = ["glance", "opened", "measured", "beyond"] as const;
export type Effort = (typeof EFFORTS)[number];

/** The price of a question by effort. Only the order and the rough proportion matter: a look costs a minute, a test ten. */
export const PRICE: Readonly<Record<Effort, number>> = Object.freeze({ glance: 1, opened: 3, measured: 8, beyond: 60 });

/** A verdict of a computation that answers a fact: `met` and `notMet` are the values they give; anything else leaves it open. */
export interface Worked {
  /** Id of a check or another computation. */
  readonly by: string;
  /** Id of a matter within it that the fact rests on, where it is not the whole; see `settles` of a conclusion. */
  readonly matter?: string;
  /** Further computations that have to be met as well; one of them that is not met is enough for `notMet`. */
  readonly and?: readonly { readonly by: string; readonly matter?: string }[];
  /** The value that `met` gives; left out where it says too little for an answer. Several that remain possible as "a | b". */
  readonly met?: string;
  /** The value that `not-met` gives; left out where it says too little for an answer. */
  readonly notMet?: string;
  /**
   * Which verdicts of the findings about the place answer it; both where left out. A finding speaks of what the schedule
   * records there, which may be another conductor, bond or condition than the one asked about. Figures given with the
   * observation are of the thing itself and always count.
   */
  readonly findings?: "none" | "not-met-only";
}

/** What an inspection records that answers a fact. */
export interface Recorded {
  /** Id of a property that an inspection records, such as "earthing-system". */
  readonly property: string;
  /**
   * Answers by value of the property, several that remain possible as "a | b"; a value that is not among them leaves the
   * fact open. A fact that is a quantity takes a property that is one as it is recorded, and needs none.
   */
  readonly gives: Readonly<Record<string, string>>;
}

interface Asked {
  /** The question as one electrician would put it to another on site. */
  readonly asks: string;
  readonly effort: Effort;
  readonly worked?: Worked;
  readonly recorded?: Recorded;
}

/** Something that is so or not. */
export interface YesNoFact extends Asked {
  readonly kind: "yes-no";
  /** What is so when the answer is yes or no, as a clause: "a finger reaches live metal". */
  readonly yes: string;
  readonly no: string;
  /** The answer that can only bring the classification up; null where neither is worse in itself, such as a system of earthing. */
  readonly worse: "yes" | "no" | null;
}

/** One of a few states. */
export interface ChoiceFact extends Asked {
  readonly kind: "choice";
  /** Clauses by value. Where `ordered` is true they run from best to worst. */
  readonly values: Readonly<Record<string, string>>;
  readonly ordered: boolean;
  /** Answers of earlier files and the value each meant, where the question has since been told apart more finely. */
  readonly formerly?: Readonly<Record<string, string>>;
}

/** A number with a unit, of which only the side of the rule's limits matters. */
export interface QuantityFact extends Asked {
  readonly kind: "quantity";
  /** What is measured or seen, in words: "depth of the cable". */
  readonly name: string;
  readonly unit: Unit;
  readonly worse: "higher" | "lower" | null;
}

export type FactOf = YesNoFact | ChoiceFact | QuantityFact;

/** Something that is so or not; see {@link YesNoFact}. */
export function yesNo(definition: Omit<YesNoFact, "kind">): YesNoFact {
  return Object.freeze({ kind: "yes-no", ...definition });
}

/** One of a few states, from best to worst. */
export function ranked(definition: Omit<ChoiceFact, "kind" | "ordered">): ChoiceFact {
  return Object.freeze({ kind: "choice", ordered: true, ...definition });
}

/** One of a few states of which none is worse in itself. */
export function oneKind(definition: Omit<ChoiceFact, "kind" | "ordered">): ChoiceFact {
  return Object.freeze({ kind: "choice", ordered: false, ...definition });
}

/** A number with a unit. */
export function amount(definition: Omit<QuantityFact, "kind">): QuantityFact {
  return Object.freeze({ kind: "quantity", ...definition });
}
