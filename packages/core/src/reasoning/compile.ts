import type { EditionId } from "../vocabulary/premises.ts";
import { type Cells, cellsOf } from "./cells.ts";
import { Diagram } from "./diagram.ts";
import { type Expression, leavesOf } from "./expression.ts";
import { type Danger, type Departure, type HarmPath, type Layer, SEVERITIES, type Subject } from "./subject.ts";

/** A fact or a contested point as a variable of the diagram. */
export interface Variable {
  readonly kind: "fact" | "point";
  readonly name: string;
  readonly cells: Cells;
}

/** States of a layer, as leaves. */
export const LAYER_STATES = ["gone", "by-one", "sound"] as const;
export type LayerState = (typeof LAYER_STATES)[number];

export interface CompiledLayer {
  readonly layer: Layer;
  /** A function with the leaves of {@link LAYER_STATES}. */
  readonly state: number;
}

export interface CompiledPath {
  readonly path: HarmPath;
  readonly exists: number;
  readonly layers: readonly CompiledLayer[];
  /** A function with severities as leaves. */
  readonly severity: number;
}

export interface CompiledDeparture {
  readonly departure: Departure;
  readonly holds: number;
}

export interface CompiledDanger {
  readonly danger: Danger;
  readonly holds: number;
}

/** A subject under one edition, ready to be asked. Facts come before contested points. */
export interface Compiled {
  readonly subject: Subject;
  readonly edition: EditionId;
  readonly variables: readonly Variable[];
  readonly index: ReadonlyMap<string, number>;
  readonly diagram: Diagram;
  readonly paths: readonly CompiledPath[];
  readonly departures: readonly CompiledDeparture[];
  readonly dangers: readonly CompiledDanger[];
  /** The function from facts and positions to the severity, with severities as leaves. */
  readonly root: number;
}

const both = (a: number, b: number) => Math.min(a, b);
const either = (a: number, b: number) => Math.max(a, b);

/** Severity by how many independent layers are left: none left is danger now, one left is one event away. */
const BY_LAYERS_LEFT = [3, 2, 0] as const;

/** Builds the exact function of a subject under an edition; throws where a rule speaks of what the subject does not have. */
export function compile(subject: Subject, edition: EditionId): Compiled {
  const rules = rulesOf(subject);
  const leaves = rules.flatMap((rule) => [...leavesOf(rule)]);
  const variables: Variable[] = [
    ...Object.entries(subject.facts).map(([name, fact]) => ({
      kind: "fact" as const,
      name,
      cells: cellsOf(name, fact, leaves),
    })),
    ...Object.entries(subject.contested).map(([name, { positions }]) => ({
      kind: "point" as const,
      name,
      cells: {
        values: Object.keys(positions),
        words: Object.values(positions).map(({ words }) => words),
        ordered: false,
      },
    })),
  ];
  const index = new Map(variables.map(({ kind, name }, i) => [`${kind} ${name}`, i]));
  const diagram = new Diagram(variables.map(({ cells }) => cells.values.length));
  const build = (rule: Expression): number => functionOf(rule, subject, variables, index, diagram);

  const paths = subject.paths.filter(countsUnder(edition)).map((path): CompiledPath => {
    const layers = path.layers.map((layer) => ({
      layer,
      state: diagram.apply(
        (gone, sound) => (gone === 1 ? 0 : sound === 1 ? 2 : 1),
        build(layer.gone),
        build(layer.sound),
      ),
    }));
    const exists = build(path.exists);
    const left = layers.reduce((sum, { state }) => diagram.apply((a, b) => Math.min(2, a + b), sum, state), 0);
    const severity = diagram.apply(
      (there, n) => (there === 1 ? (BY_LAYERS_LEFT[n as 0 | 1 | 2] ?? 0) : 0),
      exists,
      left,
    );
    return { path, exists, layers, severity };
  });
  const departures = subject.departures
    .filter(countsUnder(edition))
    .map((departure) => ({ departure, holds: build(departure.when) }));
  const dangers = (subject.dangers ?? [])
    .filter(countsUnder(edition))
    .map((danger) => ({ danger, holds: build(danger.when) }));
  const root = [
    ...paths.map(({ severity }) => severity),
    ...departures.map(({ holds }) => holds),
    ...dangers.map(({ danger, holds }) => diagram.map((holding) => holding * SEVERITIES.indexOf(danger.least), holds)),
  ].reduce((worst, one) => diagram.apply(either, worst, one), 0);
  return { subject, edition, variables, index, diagram, paths, departures, dangers, root };
}

const RULES = new WeakMap<Compiled, Map<Expression, number>>();

/** A rule about a compiled subject as a function of 0 and 1; made once. Its limits have to be limits of the subject's own rules. */
export function ruleIn(rule: Expression, compiled: Compiled): number {
  const known = RULES.get(compiled) ?? new Map<Expression, number>();
  RULES.set(compiled, known);
  const made =
    known.get(rule) ?? functionOf(rule, compiled.subject, compiled.variables, compiled.index, compiled.diagram);
  known.set(rule, made);
  return made;
}

function countsUnder(edition: EditionId) {
  return ({ editions }: { readonly editions?: readonly EditionId[] }) => editions?.includes(edition) ?? true;
}

function rulesOf({ paths, departures, dangers = [] }: Subject): readonly Expression[] {
  return [
    ...paths.flatMap(({ exists, layers }) => [exists, ...layers.flatMap(({ gone, sound }) => [gone, sound])]),
    ...departures.map(({ when }) => when),
    ...dangers.map(({ when }) => when),
  ];
}

function functionOf(
  rule: Expression,
  subject: Subject,
  variables: readonly Variable[],
  index: ReadonlyMap<string, number>,
  diagram: Diagram,
): number {
  const go = (one: Expression): number => functionOf(one, subject, variables, index, diagram);
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
    default: {
      const variable = variableOf(rule, subject, index);
      return diagram.among(variable, valuesOf(rule, (variables[variable] as Variable).cells, subject));
    }
  }
}

type Leaf = Exclude<Expression, { readonly op: "always" | "never" | "all" | "any" | "not" }>;

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
