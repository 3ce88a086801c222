import type { Asked } from "./asked.ts";
import type { Hypothesis } from "./fault.ts";
import { type Problem, problemOf } from "./fit.ts";
import { positionsAt } from "./hypothesis.ts";
import { type NextReading, nextReading } from "./next-reading.ts";
import { observedOf, type RingInput } from "./readings.ts";
import { faultsOf, metresOf, type RingFault } from "./said.ts";
import { searched, withEveryLeg } from "./search.ts";
import type { Ranked } from "./weigh.ts";

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
  /** Probability, among all that was tried, of a sound ring, and of one that is sound but for spurs and a length misjudged. */
  readonly sound: number;
  readonly permitted: number;
}

const SHOWN = 8;
const LEAST_PROBABILITY = 1e-4;
/**
 * What explains the readings of a ring final circuit: hypotheses fitted by the resistance network, ranked by likelihood,
 * Occam's penalty and how common each is. The errors of the meter that are common to all readings, the distances and the
 * conductors' own resistances are fitted with every hypothesis. Throws a RangeError for numbers that are no readings.
 */
export function diagnoseRingReadings(input: RingInput): RingDiagnosis {
  refuse(input);
  const arranged = input.orderKnown ? input : risingToTheMiddle(input);
  const observed = observedOf(arranged);
  const problem = problemOf(arranged, observed);
  const kinds = withEveryLeg(searched(problem), problem);
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
    sound: probabilityOf(kinds, ({ faults }) => faults.length === 0),
    permitted: probabilityOf(kinds, ({ faults }) => faults.every(({ key }) => isPermitted(key))),
  };
}

const isPermitted = (key: string) => key.startsWith("spur") || key === "other-length";

function probabilityOf(kinds: readonly Ranked[], holds: (hypothesis: Hypothesis) => boolean): number {
  return kinds.reduce(
    (sum, { best, probability, none }) => sum + (none !== true && holds(best.hypothesis) ? probability : 0),
    0,
  );
}

/** The highest misfit that chance leaves, four deviations of it above its mean. */
function accountsFor({ best, none }: Ranked, { observed }: Problem): boolean {
  return none !== true && best.misfit <= observed.length + 4 * Math.sqrt(2 * observed.length);
}

function explanation(kind: Ranked, problem: Problem, back: readonly number[]): RingExplanation {
  const { best } = kind;
  const { values, hypothesis } = best;
  const from = positionsAt(hypothesis);
  return {
    faults: faultsOf(kind, problem).map((fault) => renumbered(fault, back)),
    probability: kind.probability,
    misfit: best.misfit,
    readings: problem.observed.map(({ asked, shown, bound, deviation }, i) => ({
      asked: named(asked, back),
      shown,
      open: bound === "above",
      expected: best.expected[i] as number,
      deviation,
    })),
    pointsAt: back.map((_, i) => values[from + back.indexOf(i)] as number),
    metres: metresOf(best, problem),
  };
}

function renumbered<F extends RingFault>(fault: F, back: readonly number[]): F {
  if (fault.kind === "none-of-these") return { ...fault, nearest: fault.nearest.map((one) => renumbered(one, back)) };
  return "point" in fault && fault.point !== undefined ? { ...fault, point: back[fault.point] as number } : fault;
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
