import type { Evidence, Fact, Matter, Term, Unit } from "@good-grounds/core";
import { RCD_TESTED, type RcdTest, type RcdTested } from "./circuits/rcd-test.ts";

/** A quantity a computation asks for. One that is read off an instrument is a reading when it is given by hand as well. */
export interface QuantityNeed<U extends Unit> {
  readonly kind: "quantity";
  readonly term: Term<U>;
  readonly hint: string;
}

/** Several quantities of one term, such as the readings round a ring. */
export interface QuantityListNeed<U extends Unit> {
  readonly kind: "quantity-list";
  readonly term: Term<U>;
  readonly hint: string;
}

/** One of a few words. */
export interface WordNeed<W extends string> {
  readonly kind: "word";
  readonly matter: Matter;
  readonly words: readonly W[];
  readonly hint: string;
}

/** Several of a few words, such as every method an unseen route may have. */
export interface WordListNeed<W extends string> {
  readonly kind: "word-list";
  readonly matter: Matter;
  readonly words: readonly W[];
  readonly hint: string;
}

/** Yes or no. */
export interface YesNoNeed {
  readonly kind: "yes-no";
  readonly matter: Matter;
  readonly hint: string;
}

/** What the tests of one or several RCDs showed: by hand one word each, from an inspection their readings. */
export interface RcdTestsNeed {
  readonly kind: "rcd-tests";
  readonly matter: Matter;
  readonly words: readonly RcdTested[];
  readonly hint: string;
}

export type Need =
  | QuantityNeed<Unit>
  | QuantityListNeed<Unit>
  | WordNeed<string>
  | WordListNeed<string>
  | RcdTestsNeed
  | YesNoNeed;

/** What a computation asks for, by the name used in its code and, in kebab case, on the command line. */
export type Needs = Readonly<Record<string, Need>>;

/** The evidence that answers one need. */
export type AnswerTo<N extends Need> =
  N extends QuantityNeed<infer U>
    ? Evidence<U>
    : N extends QuantityListNeed<infer U>
      ? readonly Evidence<U>[]
      : N extends WordNeed<infer W>
        ? Fact<W>
        : N extends WordListNeed<infer W>
          ? readonly Fact<W>[]
          : N extends RcdTestsNeed
            ? readonly RcdTest[]
            : Fact<boolean>;

/** The evidence that answers all needs; what is not known is there as not known. */
export type Given<N extends Needs> = { readonly [K in keyof N]: AnswerTo<N[K]> };

export function asksQuantity<U extends Unit>(term: Term<U>, hint = ""): QuantityNeed<U> {
  return Object.freeze({ kind: "quantity", term, hint });
}

export function asksQuantities<U extends Unit>(term: Term<U>, hint = ""): QuantityListNeed<U> {
  return Object.freeze({ kind: "quantity-list", term, hint });
}

export function asksWord<const W extends string>(matter: Matter, words: readonly W[], hint = ""): WordNeed<W> {
  return Object.freeze({ kind: "word", matter, words, hint });
}

export function asksWords<const W extends string>(matter: Matter, words: readonly W[], hint = ""): WordListNeed<W> {
  return Object.freeze({ kind: "word-list", matter, words, hint });
}

export function asksRcdTests(matter: Matter, hint = ""): RcdTestsNeed {
  return Object.freeze({ kind: "rcd-tests", matter, words: RCD_TESTED, hint });
}

export function asksYesNo(matter: Matter, hint = ""): YesNoNeed {
  return Object.freeze({ kind: "yes-no", matter, hint });
}
