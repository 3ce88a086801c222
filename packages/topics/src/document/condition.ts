import type { Spot } from "../text/fault.ts";

/** A name or value as written, and where. */
export interface Word {
  readonly text: string;
  readonly at: Spot;
}

export const COMPARISONS = ["at least", "more than", "less than", "at most"] as const;
export type Comparison = (typeof COMPARISONS)[number];

/** Which of the conditions below have to hold. */
export const JOINED = ["all", "any", "none", "not-all"] as const;
export type Joined = (typeof JOINED)[number];

/** A condition as written. */
export type Condition =
  | { readonly kind: "always"; readonly at: Spot }
  /** A fact that is so ("finger-reaches-live", "not sheathed"). */
  | { readonly kind: "so"; readonly name: Word; readonly not: boolean }
  /** A fact, state or contested point with one of these values; `reach` takes in what is worse or better as well. */
  | {
      readonly kind: "is";
      readonly name: Word;
      readonly not: boolean;
      readonly values: readonly Word[];
      readonly reach?: "worse" | "better";
    }
  | { readonly kind: "compare"; readonly name: Word; readonly how: Comparison; readonly quantity: Word }
  | { readonly kind: Joined; readonly of: readonly Condition[]; readonly at: Spot };
