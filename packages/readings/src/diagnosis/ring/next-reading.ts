import { type Asked, CONDUCTORS, PAIRS } from "./asked.ts";
import type { Fit, Problem } from "./fit.ts";
import { OWN, positionsAt, predict } from "./hypothesis.ts";
import { ownDeviation } from "./readings.ts";
import type { Ranked } from "./weigh.ts";

/** The reading that separates two explanations best. */
export interface NextReading {
  readonly asked: Asked;
  /** What each of the two explanations leads to expect, Ω; infinite for open. */
  readonly expected: readonly [number, number];
  /** Difference of the two over the uncertainty of the reading; {@link OPEN_AGAINST_CLOSED} where one is open. */
  readonly separation: number;
  /** What is separated: the two leading kinds, or two places of the leading one. */
  readonly separates: "explanations" | "places";
}

const OPEN_AGAINST_CLOSED = 99;
/** A second explanation less probable than this is no rival. */
const RIVAL = 0.01;
/** A reading that separates by less is not worth taking. */
const WORTH_TAKING = 1.5;

/** The next reading, for the leading two kinds, or for the place of the leading one; undefined where none helps. */
export function nextReading(kinds: readonly Ranked[], problem: Problem): NextReading | undefined {
  const [first, second] = kinds.filter(({ none }) => none !== true);
  if (first === undefined) return undefined;
  if (second !== undefined && second.probability > RIVAL) {
    const found = separating(first.best, second.best, problem, "explanations");
    if (found !== undefined) return found;
  }
  const [here, ...others] = first.members;
  // The rival place is the most probable one that is not next door, if any such is left.
  const rival = others.find(({ part }) => part > RIVAL);
  if (here === undefined || rival === undefined) return undefined;
  return separating(here.fit, rival.fit, problem, "places");
}

function separating(a: Fit, b: Fit, problem: Problem, separates: NextReading["separates"]): NextReading | undefined {
  const methods = [a, b].some(({ hypothesis }) => hypothesis.faults.some(({ ofMethod }) => ofMethod === true));
  const asked = candidates(problem, methods);
  const [one, other] = [retaken(a, asked), retaken(b, asked)];
  let best: NextReading | undefined;
  for (const [i, candidate] of asked.entries()) {
    const expected = [one[i] as number, other[i] as number] as const;
    const separation = apart(expected, problem);
    if (separation > WORTH_TAKING && separation > (best?.separation ?? 0) + 1e-9) {
      best = { asked: candidate, expected, separation, separates };
    }
  }
  return best;
}

function apart([a, b]: readonly [number, number], { input }: Problem): number {
  const [openA, openB] = [a, b].map((ohms) => !(ohms < 1e3));
  if (openA || openB) return openA === openB ? 0 : OPEN_AGAINST_CLOSED;
  const { resolution, accuracy } = input.r1;
  const deviation = ownDeviation({ shown: Math.max(a, b), resolution, accuracy, bound: "exact" });
  return Math.min(OPEN_AGAINST_CLOSED - 1, Math.abs(a - b) / deviation);
}

/** What a reading taken anew would show, with nulled leads and the right ends joined, and written where it belongs. */
function retaken({ hypothesis, values }: Fit, asked: readonly Asked[]): Float64Array {
  const kept: number[] = [];
  let at = OWN;
  for (const { sizes, ofMethod } of hypothesis.faults) {
    if (ofMethod !== true) kept.push(...values.slice(at, at + sizes.length));
    at += sizes.length;
  }
  const parameters = Float64Array.from([...values.slice(0, OWN), ...kept, ...values.slice(positionsAt(hypothesis))]);
  const out = new Float64Array(asked.length);
  predict({ faults: hypothesis.faults.filter(({ ofMethod }) => ofMethod !== true) }, parameters, asked, out);
  return out;
}

/** Readings that could be taken next; those already taken only where a mistake of method is in question. */
function candidates({ input, asked }: Problem, retake: boolean): readonly Asked[] {
  const found: Asked[] = [];
  if (retake) {
    for (const conductor of CONDUCTORS) {
      found.push({ arrangement: "ends-apart", pair: "line-neutral", conductor, point: -1 });
    }
  }
  const points = input.points.map((_, point) => point);
  const taken = new Set(asked.map(({ arrangement, pair, point }) => `${arrangement} ${pair} ${point}`));
  for (const pair of PAIRS)
    for (const point of points) {
      if (retake || !taken.has(`cross-connected ${pair} ${point}`)) {
        found.push({ arrangement: "cross-connected", pair, point });
      }
    }
  // At a point where terminals are mixed up, the pair that is not joined tells which.
  for (const pair of ["line-neutral", "line-cpc"] as const)
    for (const terminals of PAIRS)
      for (const point of points) {
        if (terminals !== pair) found.push({ arrangement: "cross-connected", pair, terminals, point });
      }
  for (const pair of PAIRS) for (const point of points) found.push({ arrangement: "joined-at-one-end", pair, point });
  return found;
}
