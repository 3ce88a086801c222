import type { Classification, EditionId } from "../vocabulary/premises.ts";
import type { FactGround, Knowledge } from "./answers.ts";
import { type Compiled, LAYER_STATES, type LayerState } from "./compile.ts";
import { type ContestedView, contestedViews } from "./contested.ts";
import { type Deciding, decidingFacts } from "./deciding.ts";
import { type Explained, explain } from "./explain.ts";
import type { Expression } from "./expression.ts";
import { nextQuestion, openFacts, type Question } from "./question.ts";
import type { Danger, Departure, HarmPath, Layer, Severity } from "./subject.ts";
import { SEVERITIES } from "./subject.ts";
import { bitsOf, possibleLeaves, settledIn } from "./survey.ts";

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

/**
 * What follows from what is known of one subject. A derived classification is what the facts allow under the positions
 * taken; the person who signs decides.
 */
export interface Reasoning {
  readonly subject: string;
  readonly edition: EditionId;
  /** Severities still possible under the positions taken, from least to most. */
  readonly possible: readonly Severity[];
  /** Severities still possible under any position. */
  readonly underAnyView: readonly Severity[];
  /**
   * The classification that follows; null while questions are open. FI where C1 or C2 cannot be ruled out, something
   * less is also possible, and what would settle it is beyond the agreed extent.
   */
  readonly classification: Classification | null;
  /** Facts that could still change it and cannot be settled within the extent. */
  readonly unsettled: readonly string[];
  /** Facts that could still change it and can be asked for. */
  readonly open: readonly string[];
  readonly next: Question | undefined;
  readonly deciding: Deciding;
  readonly contested: readonly ContestedView[];
  /** The position taken on each contested point, whether or not it changes anything here. */
  readonly taken: ReadonlyMap<string, string>;
  readonly paths: readonly PathArgument[];
  readonly departures: readonly DepartureArgument[];
  readonly dangers: readonly DangerArgument[];
  readonly grounds: ReadonlyMap<string, FactGround>;
}

export function severitiesOf(leaves: number): readonly Severity[] {
  return bitsOf(leaves).map((leaf) => SEVERITIES[leaf] as Severity);
}

/** Reasons about a subject from what is known. */
export function reason(compiled: Compiled, knowledge: Knowledge): Reasoning {
  const { subject, edition, root, variables, diagram } = compiled;
  const { masks, beyond, grounds } = knowledge;
  const possible = severitiesOf(possibleLeaves(compiled, root, masks));
  const anyView = masks.map((mask, i) =>
    variables[i]?.kind === "point" ? 2 ** (variables[i]?.cells.values.length ?? 1) - 1 : mask,
  );
  const names = (numbers: readonly number[]) => numbers.map((number) => variables[number]?.name ?? "");
  const open = possible.length > 1 ? openFacts(compiled, knowledge) : [];
  const unsettled =
    possible.length > 1
      ? diagram.support(settledIn(compiled, root, masks)).filter((variable) => beyond.has(variable))
      : [];
  return {
    subject: subject.id,
    edition,
    possible,
    underAnyView: severitiesOf(possibleLeaves(compiled, root, anyView)),
    classification: classificationOf(possible, open.length === 0),
    unsettled: names(unsettled),
    open: names(open),
    next: nextQuestion(compiled, knowledge),
    deciding: decidingFacts(compiled, knowledge),
    contested: contestedViews(compiled, knowledge),
    taken: new Map(
      variables.flatMap(({ kind, name, cells }, i): [string, string][] => {
        const position = cells.values[bitsOf(masks[i] as number)[0] ?? 0];
        return kind === "point" && position !== undefined ? [[name, position]] : [];
      }),
    ),
    paths: compiled.paths.map(({ path, exists, layers, severity }) => ({
      path,
      exists: explained(path.exists, exists, compiled, knowledge),
      layers: layers.map(({ layer, state }) => {
        const states = bitsOf(possibleLeaves(compiled, state, masks)).map((leaf) => LAYER_STATES[leaf] as LayerState);
        return { layer, states, because: becauseOf(layer, states, compiled, knowledge) };
      }),
      possible: severitiesOf(possibleLeaves(compiled, severity, masks)),
    })),
    departures: compiled.departures.map(({ departure, holds }) => ({
      departure,
      holds: explained(departure.when, holds, compiled, knowledge),
    })),
    dangers: compiled.dangers.map(({ danger, holds }) => ({
      danger,
      holds: explained(danger.when, holds, compiled, knowledge),
    })),
    grounds,
  };
}

function classificationOf(possible: readonly Severity[], nothingLeftToAsk: boolean): Classification | null {
  const [least, ...others] = possible;
  if (others.length === 0) return least ?? null;
  if (!nothingLeftToAsk) return null;
  const couldBeDanger = possible.includes("C1") || possible.includes("C2");
  if (!couldBeDanger) return null;
  // Where both C1 and C2 are possible and nothing less, danger is certain: it is at least C2 and more is not settled.
  return least === "C2" ? "C2" : "FI";
}

/** A rule with the leaves that show it; whether it holds is read off its function, which is exact. */
function explained(rule: Expression, holds: number, compiled: Compiled, knowledge: Knowledge): Explained {
  return {
    ...explain(rule, compiled, knowledge),
    truth: truthOf(possibleLeaves(compiled, holds, knowledge.masks)),
  };
}

function truthOf(leaves: number): Explained["truth"] {
  return leaves === 2 ? "true" : leaves === 1 ? "false" : "open";
}

function becauseOf(
  { gone, sound }: Layer,
  states: readonly LayerState[],
  compiled: Compiled,
  knowledge: Knowledge,
): readonly string[] {
  const [isGone, isSound] = [explain(gone, compiled, knowledge), explain(sound, compiled, knowledge)];
  if (states.length > 1) return [...new Set([...isGone.because, ...isSound.because])];
  return states[0] === "gone" ? isGone.because : isSound.because.length > 0 ? isSound.because : isGone.because;
}
