import type {
  Apart,
  Compared,
  Evidence,
  Judgement,
  Matter,
  Reckoner,
  Relation,
  Unit,
  Verdict,
} from "@good-grounds/core";
import { type Doubted, lessOf, standardOf } from "./doubted.ts";
import { twoSided } from "./normal.ts";

/**
 * When two accounts of one thing do not fit each other: their difference in standard deviations of all errors between
 * them, shared ones cancelled. Beyond `CLEAR` they cannot both be true ("not met"): of sound accounts one pair in 2,000
 * lies so far apart by the errors alone. Between the two it is possible that they do ("too near to call"): one in 300.
 * Errors within limits have thinner tails than the normal distribution, so that these are upper bounds where the limits
 * hold; for any mix of rectangular errors 2·exp(−z²/2) is one that needs no normal distribution.
 */
export const CLEAR: Threshold = Object.freeze({ chance: 1 / 2000, deviations: 3.4808 });
export const POSSIBLE: Threshold = Object.freeze({ chance: 1 / 300, deviations: 2.9352 });

export interface Threshold {
  /** How often errors alone bring sound accounts this far apart or further. */
  readonly chance: number;
  /** The same in standard deviations. */
  readonly deviations: number;
}

/** How two accounts of one thing stand to each other. */
export interface Residual {
  /** One account less the other; 0 where it lies on the side that is not minded, or an open end reaches the other. */
  readonly apart: number;
  /** Standard deviation of the difference. */
  readonly standard: number;
  /** The difference in standard deviations, with its sign. */
  readonly deviations: number;
  /** How often errors alone bring them this far apart or further. */
  readonly chance: number;
  readonly verdict: Extract<Verdict, "met" | "not-met" | "too-near">;
}

type Side = Exclude<Relation, "at-most" | "at-least">;

/** `not-below` minds an account that lies below the other, `not-above` one above it. */
export function residualOf(account: Doubted, other: Doubted, relation: Side = "agrees-with"): Residual {
  const difference = lessOf(account, other);
  const { value, open } = difference;
  const sound =
    Number.isNaN(open) ||
    (open > 0 && value <= 0) ||
    (open < 0 && value >= 0) ||
    (relation === "not-below" && value >= 0) ||
    (relation === "not-above" && value <= 0);
  const apart = sound ? 0 : value;
  const standard = standardOf(difference);
  // Decimals as typed that equal each other agree, whatever the last bit of their difference.
  const equal = Math.abs(apart) <= 1e-9 * Math.max(Math.abs(account.value), Math.abs(other.value));
  const deviations = equal ? 0 : apart / standard;
  return { apart, standard, deviations, chance: twoSided(deviations), verdict: verdictOf(deviations) };
}

function verdictOf(deviations: number): Residual["verdict"] {
  const size = Math.abs(deviations);
  return size > CLEAR.deviations ? "not-met" : size > POSSIBLE.deviations ? "too-near" : "met";
}

/** What is shown of an account of a quantity, and what it may be out by. */
export interface Account<U extends Unit> {
  readonly shown: Evidence<U>;
  /** Undefined where it is not known. */
  readonly doubted: Doubted | undefined;
}

/** Whether two accounts of one quantity agree, as a judgement; "expected" where it is not shown that the other is the one. */
export function agreement<U extends Unit>(
  reckon: Reckoner,
  question: Matter,
  account: Account<U>,
  other: Account<U>,
  relation: Side = "agrees-with",
  grade: Judgement["grade"] = "proven",
): Compared {
  const apart = apartOf(account, other, relation);
  return reckon.agrees(question, account.shown, other.shown, relation, apart, grade);
}

function apartOf<U extends Unit>(account: Account<U>, other: Account<U>, relation: Side): Apart | undefined {
  if (account.doubted === undefined || other.doubted === undefined) return undefined;
  const { verdict, deviations, standard, chance } = residualOf(account.doubted, other.doubted, relation);
  return { verdict, standard, chance, margin: 1 - Math.abs(deviations) / CLEAR.deviations };
}
