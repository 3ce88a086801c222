import type { Cells } from "./cells.ts";
import type { Diagram } from "./diagram.ts";
import type { Expression } from "./expression.ts";
import { ruleOfState } from "./state.ts";
import type { Subject } from "./subject.ts";

/** A fact or a contested point as a variable of the diagram. */
export interface Variable {
  readonly kind: "fact" | "point";
  readonly name: string;
  readonly cells: Cells;
}

/** What a rule is built into. */
interface Frame {
  readonly subject: Subject;
  readonly variables: readonly Variable[];
  readonly index: ReadonlyMap<string, number>;
  readonly diagram: Diagram;
}

const both = (a: number, b: number) => Math.min(a, b);
const either = (a: number, b: number) => Math.max(a, b);

/** A rule as a function of 0 and 1; throws where it speaks of what the subject does not have. */
export function functionOf(rule: Expression, frame: Frame): number {
  const { subject, variables, index, diagram } = frame;
  const go = (one: Expression): number => functionOf(one, frame);
  switch (rule.op) {
    case "always":
      return 1;
    case "never":
      return 0;
    case "all":
      return rule.of.map(go).reduce((a, b) => diagram.apply(both, a, b), 1);
    case "any":
      return rule.of.map(go).reduce((a, b) => diagram.apply(either, a, b), 0);
    case "not":
      return diagram.map((leaf) => 1 - leaf, go(rule.of));
    case "state":
      return functionOfState(rule, frame);
    default: {
      const variable = variableOf(rule, subject, index);
      return diagram.among(variable, valuesOf(rule, (variables[variable] as Variable).cells, subject));
    }
  }
}

const STATES = new WeakMap<Diagram, Map<string, number>>();

/** Built once for each state and value: rules of many layers rest on the same. */
function functionOfState(rule: Extract<Expression, { op: "state" }>, frame: Frame): number {
  const known = STATES.get(frame.diagram) ?? new Map<string, number>();
  STATES.set(frame.diagram, known);
  return rule.values.reduce((sum, value) => {
    const key = `${rule.state} ${value}`;
    const made = known.get(key) ?? functionOf(ruleOfState({ ...rule, values: [value] }, frame.subject), frame);
    known.set(key, made);
    return frame.diagram.apply(either, sum, made);
  }, 0);
}

type Leaf = Exclude<Expression, { readonly op: "always" | "never" | "all" | "any" | "not" | "state" }>;

function variableOf(rule: Leaf, subject: Subject, index: ReadonlyMap<string, number>): number {
  const name = rule.op === "held" ? `point ${rule.point}` : `fact ${rule.fact}`;
  const variable = index.get(name);
  if (variable === undefined)
    throw new Error(`${subject.id}: a rule speaks of the ${name}, which the subject does not have`);
  return variable;
}

/** The numbers of the cells for which a leaf of a rule holds. */
export function valuesOf(rule: Leaf, cells: Cells, subject: Subject): readonly number[] {
  if ("limit" in rule) {
    if (cells.beyond === undefined) throw new Error(`${subject.id}: ${rule.fact} is not a quantity`);
    return cells.beyond(rule.op, rule.limit);
  }
  const wanted: readonly string[] = rule.op === "held" ? [rule.position] : rule.values;
  return wanted.map((value) => {
    const number = cells.values.indexOf(value);
    if (number < 0 || cells.beyond !== undefined)
      throw new Error(`${subject.id}: "${value}" is none of ${cells.values.join(", ")}`);
    return number;
  });
}
