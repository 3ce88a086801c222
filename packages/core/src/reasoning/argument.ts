import type { Knowledge } from "./answers.ts";
import { type Compiled, type CompiledLayer, LAYER_STATES, type LayerState, ruleIn } from "./compile.ts";
import { isContradicted } from "./contradiction.ts";
import { type Explained, explain, stillOpenOf } from "./explain.ts";
import { possibleOf, severitiesOf } from "./possible.ts";
import type { Contradiction, Danger, Departure, HarmPath, Layer, Severity } from "./subject.ts";
import { bitsOf, possibleLeaves } from "./survey.ts";

/** How one layer stands, with the facts that show it. */
export interface LayerArgument {
  readonly layer: Layer;
  readonly states: readonly LayerState[];
  readonly because: readonly string[];
}

/** How one route to harm stands. */
export interface PathArgument {
  readonly path: HarmPath;
  readonly exists: Explained;
  readonly layers: readonly LayerArgument[];
  readonly possible: readonly Severity[];
}

export interface DepartureArgument {
  readonly departure: Departure;
  readonly holds: Explained;
}

/** Whether something that is danger by itself is so. */
export interface DangerArgument {
  readonly danger: Danger;
  readonly holds: Explained;
}

/** Statements that cannot all be true, with the facts they are about. */
export interface ContradictionArgument {
  readonly contradiction: Contradiction;
  readonly facts: readonly string[];
}

export function pathsIn(compiled: Compiled, knowledge: Knowledge): readonly PathArgument[] {
  return compiled.paths.map(({ path, exists, layers, severity }) => ({
    path,
    exists: explain(path.exists, exists, compiled, knowledge),
    layers: layers.map((layer) => layerIn(layer, compiled, knowledge)),
    possible: severitiesOf(possibleOf(compiled, severity, knowledge.masks)),
  }));
}

export function departuresIn(compiled: Compiled, knowledge: Knowledge): readonly DepartureArgument[] {
  return compiled.departures.map(({ departure, holds }) => ({
    departure,
    holds: explain(departure.when, holds, compiled, knowledge),
  }));
}

export function dangersIn(compiled: Compiled, knowledge: Knowledge): readonly DangerArgument[] {
  return compiled.dangers.map(({ danger, holds }) => ({
    danger,
    holds: explain(danger.when, holds, compiled, knowledge),
  }));
}

/**
 * The contradictions that stand in what was stated. Where none of them is certain by itself and they leave nothing that can
 * be only together, all that have a part in it are named.
 */
export function contradictionsIn(compiled: Compiled, knowledge: Knowledge): readonly ContradictionArgument[] {
  if (!isContradicted(compiled, knowledge.masks)) return [];
  const certain = compiled.contradictions.flatMap(({ contradiction, holds }) => {
    const { truth, because } = explain(contradiction.when, holds, compiled, knowledge);
    return truth === "true" ? [{ contradiction, facts: because.map((name) => name.replace(/^fact /, "")) }] : [];
  });
  if (certain.length > 0) return certain;
  return compiled.contradictions.flatMap(({ contradiction, holds }) =>
    possibleLeaves(compiled, holds, knowledge.masks) === 1
      ? []
      : [{ contradiction, facts: compiled.diagram.support(holds).map((fact) => compiled.variables[fact]?.name ?? "") }],
  );
}

function layerIn({ layer, state }: CompiledLayer, compiled: Compiled, knowledge: Knowledge): LayerArgument {
  const states = bitsOf(possibleOf(compiled, state, knowledge.masks)).map((leaf) => LAYER_STATES[leaf] as LayerState);
  return { layer, states, because: becauseOf({ layer, state }, states, compiled, knowledge) };
}

/**
 * The facts that show how a layer stands. That it is gone is shown by one rule; anything else takes both, since what is
 * gone is gone even where it would be sound.
 */
function becauseOf(
  { layer, state }: CompiledLayer,
  states: readonly LayerState[],
  compiled: Compiled,
  knowledge: Knowledge,
): readonly string[] {
  const gone = explain(layer.gone, ruleIn(layer.gone, compiled), compiled, knowledge);
  const sound = explain(layer.sound, ruleIn(layer.sound, compiled), compiled, knowledge);
  const both = [...new Set([...gone.because, ...sound.because])];
  if (states.length > 1) return stillOpenOf(both, state, compiled, knowledge);
  if (states[0] === "gone") return gone.because;
  return both;
}
