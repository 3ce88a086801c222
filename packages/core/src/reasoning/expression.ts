/** A rule as data: it can be printed, walked and proved, which a function cannot. */
export type Expression =
  | { readonly op: "always" }
  | { readonly op: "never" }
  /** The fact has one of these values. */
  | { readonly op: "is"; readonly fact: string; readonly values: readonly string[] }
  /** The quantity is at least, or more than, the limit (as written, with its unit). */
  | { readonly op: "at-least" | "more-than"; readonly fact: string; readonly limit: string }
  /** The position taken on a contested point. */
  | { readonly op: "held"; readonly point: string; readonly position: string }
  /** The state, worked out from facts, has one of these values; see `states` of a subject. */
  | { readonly op: "state"; readonly state: string; readonly values: readonly string[] }
  | { readonly op: "all" | "any"; readonly of: readonly Expression[] }
  | { readonly op: "not"; readonly of: Expression };

export const ALWAYS: Expression = Object.freeze({ op: "always" });
export const NEVER: Expression = Object.freeze({ op: "never" });

/** The fact has one of these values; a yes-no fact has the values "yes" and "no". */
export function is(fact: string, ...values: readonly string[]): Expression {
  return Object.freeze({ op: "is", fact, values: Object.freeze([...values]) });
}

export function yes(fact: string): Expression {
  return is(fact, "yes");
}

export function no(fact: string): Expression {
  return is(fact, "no");
}

/** The quantity is the limit or more. */
export function atLeast(fact: string, limit: string): Expression {
  return Object.freeze({ op: "at-least", fact, limit });
}

/** The quantity is more than the limit. */
export function moreThan(fact: string, limit: string): Expression {
  return Object.freeze({ op: "more-than", fact, limit });
}

/** The quantity is less than the limit. */
export function below(fact: string, limit: string): Expression {
  return not(atLeast(fact, limit));
}

/** The quantity is the limit or less. */
export function atMost(fact: string, limit: string): Expression {
  return not(moreThan(fact, limit));
}

/** The position is taken on the contested point. */
export function held(point: string, position: string): Expression {
  return Object.freeze({ op: "held", point, position });
}

/** The state has one of these values. */
export function stateIs(state: string, ...values: readonly string[]): Expression {
  return Object.freeze({ op: "state", state, values: Object.freeze([...values]) });
}

export function all(...of: readonly Expression[]): Expression {
  return Object.freeze({ op: "all", of: Object.freeze([...of]) });
}

export function any(...of: readonly Expression[]): Expression {
  return Object.freeze({ op: "any", of: Object.freeze([...of]) });
}

export function not(of: Expression): Expression {
  return Object.freeze({ op: "not", of });
}

/** Every leaf of a rule, in order. */
export function* leavesOf(rule: Expression): Generator<Expression> {
  if (rule.op === "all" || rule.op === "any") for (const part of rule.of) yield* leavesOf(part);
  else if (rule.op === "not") yield* leavesOf(rule.of);
  else yield rule;
}
