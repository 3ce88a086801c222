import { cellsOf } from "./cells.ts";
import { Diagram } from "./diagram.ts";
import { type Expression, leavesOf } from "./expression.ts";
import { functionOf, type Variable } from "./rule-function.ts";
import { ruleOfState } from "./state.ts";
import {
  type Contradiction,
  type Danger,
  type Departure,
  type HarmPath,
  type Layer,
  SEVERITIES,
  type Subject,
} from "./subject.ts";

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

export interface CompiledContradiction {
  readonly contradiction: Contradiction;
  readonly holds: number;
}

/** A subject ready to be asked. Facts come before contested points. */
export interface Compiled {
  readonly subject: Subject;
  readonly variables: readonly Variable[];
  readonly index: ReadonlyMap<string, number>;
  readonly diagram: Diagram;
  readonly paths: readonly CompiledPath[];
  readonly departures: readonly CompiledDeparture[];
  readonly dangers: readonly CompiledDanger[];
  readonly contradictions: readonly CompiledContradiction[];
  /** The function that is 1 where some statements cannot be true together. */
  readonly contradicted: number;
  /** The function from facts and positions to the severity, with severities as leaves. */
  readonly root: number;
}

/** Severity by how many independent layers are left: none left is danger now, one left is one event away. */
const BY_LAYERS_LEFT = [3, 2, 0] as const;

/**
 * Builds the exact function of a subject; throws where a rule speaks of what the subject does not have,
 * or where its contradictions leave nothing that can be true.
 */
export function compile(subject: Subject): Compiled {
  const variables = variablesOf(subject);
  const index = new Map(variables.map(({ kind, name }, i) => [`${kind} ${name}`, i]));
  const diagram = new Diagram(variables.map(({ cells }) => cells.values.length));
  const frame = { subject, variables, index, diagram };
  const holds = (when: Expression) => functionOf(when, frame);

  const paths = subject.paths.map((path) => pathIn(path, frame));
  const departures = subject.departures.map((departure) => ({ departure, holds: holds(departure.when) }));
  const dangers = (subject.dangers ?? []).map((danger) => ({ danger, holds: holds(danger.when) }));
  const contradictions = (subject.contradictions ?? []).map((contradiction) => ({
    contradiction,
    holds: holds(ofFactsOnly(contradiction, subject)),
  }));
  const worst = (functions: readonly number[]) => functions.reduce((a, b) => diagram.apply(Math.max, a, b), 0);
  const contradicted = worst(contradictions.map(({ holds: certain }) => certain));
  if (contradicted === 1) throw new Error(`${subject.id}: its contradictions leave nothing that can be true`);
  const root = worst([
    ...paths.map(({ severity }) => severity),
    ...departures.map(({ holds: short }) => short),
    ...dangers.map(({ danger, holds: so }) => diagram.map((leaf) => leaf * SEVERITIES.indexOf(danger.least), so)),
  ]);
  return { ...frame, paths, departures, dangers, contradictions, contradicted, root };
}

/** Facts first, then contested points. */
function variablesOf(subject: Subject): readonly Variable[] {
  const leaves = rulesOf(subject).flatMap((rule) => [...leavesOf(rule)]);
  return [
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
}

function pathIn(path: HarmPath, frame: Parameters<typeof functionOf>[1]): CompiledPath {
  const { diagram } = frame;
  const layers = path.layers.map((layer) => ({
    layer,
    state: diagram.apply(
      (gone, sound) => (gone === 1 ? 0 : sound === 1 ? 2 : 1),
      functionOf(layer.gone, frame),
      functionOf(layer.sound, frame),
    ),
  }));
  const exists = functionOf(path.exists, frame);
  const left = layers.reduce((sum, { state }) => diagram.apply((a, b) => Math.min(2, a + b), sum, state), 0);
  const severity = diagram.apply((there, n) => (there === 1 ? (BY_LAYERS_LEFT[n as 0 | 1 | 2] ?? 0) : 0), exists, left);
  return { path, exists, layers, severity };
}

function ofFactsOnly({ when, words }: Contradiction, subject: Subject): Expression {
  const { id } = subject;
  for (const leaf of leavesThrough(when, subject))
    if (leaf.op === "held")
      throw new Error(
        `${id}: the contradiction "${words}" speaks of the point ${leaf.point}; it may speak of facts only`,
      );
  return when;
}

/** The leaves of a rule, and those of the states it rests on. */
function* leavesThrough(rule: Expression, subject: Subject): Generator<Expression> {
  for (const leaf of leavesOf(rule))
    if (leaf.op === "state") yield* leavesThrough(ruleOfState(leaf, subject), subject);
    else yield leaf;
}

const RULES = new WeakMap<Compiled, Map<Expression, number>>();

/** A rule about a compiled subject as a function of 0 and 1; made once. Its limits have to be limits of the subject's own rules. */
export function ruleIn(rule: Expression, compiled: Compiled): number {
  const known = RULES.get(compiled) ?? new Map<Expression, number>();
  RULES.set(compiled, known);
  const made = known.get(rule) ?? functionOf(rule, compiled);
  known.set(rule, made);
  return made;
}

function rulesOf({
  paths,
  departures,
  dangers = [],
  contradictions = [],
  states = {},
}: Subject): readonly Expression[] {
  return [
    ...paths.flatMap(({ exists, layers }) => [exists, ...layers.flatMap(({ gone, sound }) => [gone, sound])]),
    ...departures.map(({ when }) => when),
    ...dangers.map(({ when }) => when),
    ...contradictions.map(({ when }) => when),
    ...Object.values(states).flatMap(({ values }) =>
      Object.values(values).flatMap(({ when }) => (when === undefined ? [] : [when])),
    ),
  ];
}
