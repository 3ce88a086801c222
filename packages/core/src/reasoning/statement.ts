import type { Classification } from "../vocabulary/premises.ts";
import type { Knowledge } from "./answers.ts";
import { type Compiled, ruleIn } from "./compile.ts";
import { isContradicted } from "./contradiction.ts";
import { ALWAYS, type Expression } from "./expression.ts";
import { openFacts, unsettledFacts } from "./open.ts";
import { possibleOf, possibleSeverities, severitiesOf } from "./possible.ts";
import { SEVERITIES, type Severity } from "./subject.ts";

/** Something that may be said under a classification, and what has to be known before it is said. */
export interface Statement {
  readonly words: string;
  /** What the words claim beyond what the classification itself implies. */
  readonly when: Expression;
  /** Facts of which the words say that they could not be found out: at least one of them has to be open. */
  readonly unsettled?: readonly string[];
}

/** One statement or several, of which the first that holds is made. Words alone claim no more than their classification implies. */
export type Statements = string | Statement | readonly (string | Statement)[];

/** Words that are true only where the rule holds. */
export function says(words: string, when: Expression): Statement {
  return Object.freeze({ words, when });
}

/** Words that say of these facts that they could not be found out. */
export function unsure(words: string, unsettled: readonly string[], when: Expression = ALWAYS): Statement {
  return Object.freeze({ words, when, unsettled: Object.freeze([...unsettled]) });
}

/** Statements one by one, in order. */
export function statementsIn(statements: Statements): readonly Statement[] {
  const list = typeof statements === "string" || "words" in statements ? [statements] : statements;
  return list.map((one) => (typeof one === "string" ? { words: one, when: ALWAYS } : one));
}

/**
 * The first of the statements that what is known shows to be true, or undefined where none is. Nothing is said under a
 * classification that the facts do not bring about, whichever position is taken on a contested point; nothing is said
 * under FI unless danger can neither be shown nor ruled out. While what was stated contradicts itself nothing is known to
 * be true, and nothing is said.
 */
export function statementThatHolds(
  statements: Statements,
  classification: Classification,
  compiled: Compiled,
  knowledge: Knowledge,
): Statement | undefined {
  if (isContradicted(compiled, knowledge.masks)) return undefined;
  const follows =
    classification === "FI" ? isUnsettled(compiled, knowledge) : isCertain(classification, compiled, knowledge);
  if (!follows) return undefined;
  const unsettled = new Set(classification === "FI" ? factsThatMatter(compiled, knowledge) : []);
  return statementsIn(statements).find(
    (one) =>
      (one.unsettled === undefined || one.unsettled.some((fact) => unsettled.has(fact))) &&
      holds(ruleIn(one.when, compiled), compiled, knowledge.masks),
  );
}

/** Whether a function of 0 and 1 is 1 for every completion of what is not known that can be. */
function holds(node: number, compiled: Compiled, masks: readonly number[]): boolean {
  return possibleOf(compiled, node, masks) === 1 << 1;
}

/** Whether the facts known bring the classification about, however the open ones turn out, by some position on each contested point. */
function isCertain(classification: Severity, compiled: Compiled, { masks }: Knowledge): boolean {
  return holds(underSomeView(classification, compiled), compiled, masks);
}

/** Whether danger is possible and something less is possible too. */
function isUnsettled(compiled: Compiled, { masks }: Knowledge): boolean {
  const possible = severitiesOf(possibleSeverities(compiled, masks));
  const danger = possible.includes("C1") || possible.includes("C2");
  return danger && (possible.includes("none") || possible.includes("C3"));
}

/** Facts that could still change the severity, whether or not they can be asked for. */
export function factsThatMatter(compiled: Compiled, knowledge: Knowledge): readonly string[] {
  return [...openFacts(compiled, knowledge), ...unsettledFacts(compiled, knowledge)].map(
    (variable) => compiled.variables[variable]?.name ?? "",
  );
}

const VIEWS = new WeakMap<Compiled, Map<Severity, number>>();

/** The function that is 1 where some position on each contested point leads to the severity; made once for each. */
function underSomeView(severity: Severity, compiled: Compiled): number {
  const known = VIEWS.get(compiled) ?? new Map<Severity, number>();
  VIEWS.set(compiled, known);
  const made = known.get(severity);
  if (made !== undefined) return made;
  const { diagram, variables, root } = compiled;
  const wanted = SEVERITIES.indexOf(severity);
  let node = diagram.map((leaf) => (leaf === wanted ? 1 : 0), root);
  for (const [variable, { kind, cells }] of variables.entries())
    if (kind === "point")
      node = cells.values
        .map((_, position) => diagram.restrict(node, variable, position))
        .reduce((a, b) => diagram.apply(Math.max, a, b));
  known.set(severity, node);
  return node;
}
