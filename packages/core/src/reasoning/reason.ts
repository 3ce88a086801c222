import type { Classification } from "../vocabulary/premises.ts";
import type { FactGround, Knowledge } from "./answers.ts";
import {
  type ContradictionArgument,
  contradictionsIn,
  type DangerArgument,
  type DepartureArgument,
  dangersIn,
  departuresIn,
  type PathArgument,
  pathsIn,
} from "./argument.ts";
import type { Compiled } from "./compile.ts";
import { type ContestedView, contestedViews } from "./contested.ts";
import { isContradicted, withdrawalsOf } from "./contradiction.ts";
import { type Deciding, decidingFacts } from "./deciding.ts";
import { classificationOf, type Ending, endingOf } from "./ending.ts";
import { openFacts, unsettledFacts } from "./open.ts";
import { possibleOf, possibleSeverities, severitiesOf, severitiesUnderAnyView } from "./possible.ts";
import { nextQuestion, type Question } from "./question.ts";
import type { Severity } from "./subject.ts";
import { bitsOf } from "./survey.ts";

/** A smallest set of facts that, taken as not known, ends a contradiction, and what is possible without them. */
export interface Withdrawal {
  readonly facts: readonly string[];
  readonly possible: readonly Severity[];
}

/**
 * What follows from what is known of one subject. A derived classification is what the facts allow under the positions
 * taken; the person who signs decides.
 */
export interface Reasoning {
  readonly subject: string;
  /**
   * Severities still possible under the positions taken, from least to most. Where statements contradict each other,
   * what they or a withdrawal give, without anything less than one of these shows for certain.
   */
  readonly possible: readonly Severity[];
  /** Severities still possible under any position. */
  readonly underAnyView: readonly Severity[];
  /**
   * The classification that follows; null while questions are open. FI where C1 or C2 cannot be ruled out, something
   * less is also possible, and what would settle it is beyond the agreed extent. While statements contradict each other
   * nothing less than C2 follows.
   */
  readonly classification: Classification | null;
  readonly ending: Ending;
  /** Facts that could still change it and cannot be settled within the extent. */
  readonly unsettled: readonly string[];
  /** Facts that could still change it and can be asked for; where statements contradict each other, those to be settled. */
  readonly open: readonly string[];
  readonly next: Question | undefined;
  readonly deciding: Deciding;
  readonly contested: readonly ContestedView[];
  /** The position taken on each contested point, whether or not it changes anything here. */
  readonly taken: ReadonlyMap<string, string>;
  readonly paths: readonly PathArgument[];
  readonly departures: readonly DepartureArgument[];
  readonly dangers: readonly DangerArgument[];
  /** Contradictions that stand; none where all that was stated can be true. */
  readonly contradictions: readonly ContradictionArgument[];
  /** Ways to settle them. */
  readonly withdrawals: readonly Withdrawal[];
  readonly grounds: ReadonlyMap<string, FactGround>;
}

/** Reasons about a subject from what is known. What only a page shows is worked out when it is first asked for. */
export function reason(compiled: Compiled, knowledge: Knowledge): Reasoning {
  const { subject, variables } = compiled;
  const { masks, grounds } = knowledge;
  const possible = severitiesOf(possibleSeverities(compiled, masks));
  const names = (numbers: readonly number[]) => numbers.map((number) => variables[number]?.name ?? "");
  const open = openFacts(compiled, knowledge);
  const ending = endingOf(possible, open.length > 0, isContradicted(compiled, masks));
  const made: Partial<Record<keyof Reasoning, unknown>> = {};
  const once = <K extends keyof Reasoning>(member: K, work: () => Reasoning[K]): Reasoning[K] => {
    if (!(member in made)) made[member] = work();
    return made[member] as Reasoning[K];
  };
  return {
    subject: subject.id,
    possible,
    underAnyView: severitiesOf(severitiesUnderAnyView(compiled, masks)),
    classification: classificationOf(possible, ending),
    ending,
    unsettled: names(unsettledFacts(compiled, knowledge)),
    open: names(open),
    get next() {
      return once("next", () => nextQuestion(compiled, knowledge));
    },
    get deciding() {
      return once("deciding", () => decidingFacts(compiled, knowledge));
    },
    get contested() {
      return once("contested", () => contestedViews(compiled, knowledge));
    },
    taken: positionsTaken(compiled, knowledge),
    get paths() {
      return once("paths", () => pathsIn(compiled, knowledge));
    },
    get departures() {
      return once("departures", () => departuresIn(compiled, knowledge));
    },
    get dangers() {
      return once("dangers", () => dangersIn(compiled, knowledge));
    },
    contradictions: contradictionsIn(compiled, knowledge),
    withdrawals: withdrawalsOf(compiled, masks).map((withdrawn) => ({
      facts: names(withdrawn.variables),
      possible: severitiesOf(possibleOf(compiled, compiled.root, withdrawn.masks)),
    })),
    grounds,
  };
}

function positionsTaken({ variables }: Compiled, { masks }: Knowledge): ReadonlyMap<string, string> {
  return new Map(
    variables.flatMap(({ kind, name, cells }, i): [string, string][] => {
      const position = cells.values[bitsOf(masks[i] as number)[0] ?? 0];
      return kind === "point" && position !== undefined ? [[name, position]] : [];
    }),
  );
}
