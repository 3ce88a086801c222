import { ringCandidates, withOtherSizes } from "./candidates.ts";
import { fit, type Problem } from "./fit.ts";
import { type NextReading, nextReading } from "./next-reading.ts";
import { faultsOf, metresOf, type RingFault } from "./place.ts";
import { otherOpenPoints, withPoints } from "./points.ts";
import { type Ranked, ranked } from "./rank.ts";
import { observedOf, type RingInput } from "./readings.ts";
import type { Asked, Hypothesis } from "./ring-state.ts";

/** Explanations whose odds against the leading one are not below this cannot be told apart from it. */
export const TOLD_APART = 1 / 50;

/** One reading beside what an explanation leads to expect, Ω. */
export interface ReadingAndExpected {
  readonly asked: Asked;
  readonly shown: number;
  readonly open: boolean;
  readonly expected: number;
  /** Standard deviation of the reading's own error, Ω. */
  readonly deviation: number;
}

export interface RingExplanation {
  /** Empty for a sound ring. */
  readonly faults: readonly RingFault[];
  /** Among the explanations tried; together they make 1. */
  readonly probability: number;
  /** Σ((shown − expected) ÷ deviation)². */
  readonly misfit: number;
  readonly readings: readonly ReadingAndExpected[];
  readonly hypothesis: Hypothesis;
  /** Places of the points by parts of the ring, as this explanation has them. */
  readonly pointsAt: readonly number[];
  /** Length of the ring, m, where the conductor's resistance per metre is known. */
  readonly metres: number | undefined;
}

export interface RingDiagnosis {
  /** Most probable first. */
  readonly explanations: readonly RingExplanation[];
  /** How many of the leading explanations cannot be told apart; 1 where the first stands alone. */
  readonly leading: number;
  /** Whether the leading explanation accounts for the readings within their uncertainty. */
  readonly accounts: boolean;
  readonly next: NextReading | undefined;
  /** Probability, among all that was tried, of a sound ring, and of one that is sound but for spurs. */
  readonly sound: number;
  readonly soundOrSpurs: number;
}

const SHOWN = 8;
const LEAST_PROBABILITY = 1e-4;
/** Explanations of the ring to which states of points are added. */
const WIDENED = 2;
/** Steps of the fit for the legs of the leading explanation. */
const MOST_STEPS = 3;
const MOST_LEGS = 24;

/**
 * What explains the readings of a ring final circuit: hypotheses fitted by the resistance network, ranked by likelihood,
 * Occam's penalty and how common each is. The errors of the meter that are common to all readings, the distances and the
 * conductors' own resistances are fitted with every hypothesis. Throws a RangeError for numbers that are no readings.
 */
export function diagnoseRingReadings(input: RingInput): RingDiagnosis {
  refuse(input);
  const arranged = input.orderKnown ? input : risingToTheMiddle(input);
  const observed = observedOf(arranged);
  const problem: Problem = { input: arranged, observed, asked: observed.map(({ asked }) => asked) };
  const rings = [problem, ...withOtherSizes(problem)].flatMap(ringCandidates);
  const first = ranked(rings, problem);
  // A sound ring with a spur is the commonest of all, however ill the ring alone explains it.
  const bases = first.filter(({ best }, i) => i < WIDENED || best.hypothesis.ring.kind === "sound");
  const widened = bases.flatMap(({ best }) => [...otherOpenPoints(problem, best), ...withPoints(problem, best)]);
  const kinds = withEveryLeg(widened.length > 0 ? ranked([...rings, ...widened], problem) : first, problem);
  const leader = kinds[0] as Ranked;
  const back = arranged.points.map((point) => input.points.indexOf(point));
  const next = nextReading(kinds, problem);
  return {
    explanations: kinds
      .filter(({ probability }, i) => i === 0 || (i < SHOWN && probability > LEAST_PROBABILITY))
      .map((kind) => explanation(kind, problem, back)),
    leading: kinds.filter(({ probability }) => probability >= TOLD_APART * leader.probability).length,
    accounts: accountsFor(leader, problem),
    next: next === undefined ? undefined : { ...next, asked: named(next.asked, back) },
    sound: probabilityOf(kinds, (one) => isAsWritten(one) && one.points.length === 0),
    soundOrSpurs: probabilityOf(kinds, (one) => isAsWritten(one) && one.points.every(({ kind }) => kind === "spur")),
  };
}

/** A sound ring of the sizes written down. */
function isAsWritten({ ring, cpc }: Hypothesis): boolean {
  return ring.kind === "sound" && cpc === undefined;
}

function probabilityOf(kinds: readonly Ranked[], holds: (hypothesis: Hypothesis) => boolean): number {
  return kinds.reduce((sum, { best, probability }) => sum + (holds(best.hypothesis) ? probability : 0), 0);
}

/** The leading explanation fitted in every leg, so that the probabilities of its places are those of the best fits. */
function withEveryLeg(kinds: readonly Ranked[], problem: Problem): readonly Ranked[] {
  const [leader, ...others] = kinds;
  if (leader === undefined || leader.members.length === 1) return kinds;
  const refined = leader.members.map(({ fit: one }, i) =>
    i < MOST_LEGS ? fit(problem, one.hypothesis, one.values, MOST_STEPS) : one,
  );
  return ranked([...refined, ...others.flatMap(({ members }) => members.map((one) => one.fit))], problem);
}

/** The highest misfit that chance leaves, four deviations of it above its mean. */
function accountsFor({ best }: Ranked, { observed }: Problem): boolean {
  return best.misfit <= observed.length + 4 * Math.sqrt(2 * observed.length);
}

function explanation(kind: Ranked, problem: Problem, back: readonly number[]): RingExplanation {
  const { best } = kind;
  const { hypothesis, values } = best;
  const renamed = (point: number) => back[point] as number;
  const from = values.length - problem.input.points.length;
  const pointsAt = back.map((_, i) => values[from + back.indexOf(i)] as number);
  return {
    faults: faultsOf(kind, problem).map((fault) =>
      "point" in fault ? { ...fault, point: renamed(fault.point) } : fault,
    ),
    probability: kind.probability,
    misfit: best.misfit,
    readings: problem.observed.map(({ asked, shown, bound, deviation }, i) => ({
      asked: named(asked, back),
      shown,
      open: bound === "above",
      expected: best.expected[i] as number,
      deviation,
    })),
    hypothesis: {
      ...hypothesis,
      points: hypothesis.points.map((state) => ({ ...state, point: renamed(state.point) })),
    },
    pointsAt,
    metres: metresOf(best, problem),
  };
}

function named(asked: Asked, back: readonly number[]): Asked {
  return asked.point < 0 ? asked : { ...asked, point: back[asked.point] as number };
}

/**
 * Points whose order is not known, placed so that the line to neutral readings rise to the middle: the two halves of a
 * ring are alike, so that nothing but the height of a reading tells how far from the board it was taken.
 */
function risingToTheMiddle(input: RingInput): RingInput {
  const height = (i: number) => {
    const { lineNeutral, lineCpc } = input.points[i] ?? {};
    return (lineNeutral?.shown ?? 0) + (lineCpc?.shown ?? 0);
  };
  const order = input.points.map((_, i) => i).sort((a, b) => height(a) - height(b));
  const points = [...order.filter((_, i) => i % 2 === 0), ...order.filter((_, i) => i % 2 === 1).reverse()];
  return { ...input, points: points.map((i) => input.points[i] as RingInput["points"][number]) };
}

const MOST_POINTS = 400;

function refuse({ r1, rn, r2, points }: RingInput): void {
  if (points.length > MOST_POINTS)
    throw new RangeError(`a ring of ${points.length} points; up to ${MOST_POINTS} can be looked at`);
  const readings = [r1, rn, r2, ...points.flatMap(({ lineNeutral, lineCpc }) => [lineNeutral, lineCpc])];
  for (const reading of readings) {
    if (reading === undefined) continue;
    const { shown, resolution } = reading;
    if (!(shown >= 0 && shown < 1e9) || !(resolution > 0 && resolution < 1e9)) {
      throw new RangeError(`${shown} Ω, ${resolution} Ω to the digit, is no reading of a continuity range`);
    }
  }
}
