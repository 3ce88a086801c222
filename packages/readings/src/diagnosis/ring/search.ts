import { CONDUCTORS, type Conductor } from "./asked.ts";
import type { Around, Explanation, Tried } from "./explanation.ts";
import { EXPLANATIONS } from "./explanations/index.ts";
import type { Fault, Hypothesis } from "./fault.ts";
import { type Fit, fit, type Problem } from "./fit.ts";
import { LINE, positionsAt, predict, SOUND } from "./hypothesis.ts";
import { openStates, otherOpenPoints, withPoints } from "./points.ts";
import { keyOf, type Ranked, ranked, weightOf } from "./weigh.ts";

/** Of the legs tried, the likeliest are refined, by so many steps. */
const REFINED = 4;
const REFINED_BESIDE = 2;
const STEPS = 5;
/** Of a ring of more legs so many are refined in full where a fault has no size to fit. */
const ALL_REFINED = 16;
/** Explanations to which states of points are added. */
const WIDENED = 2;
/** Explanations to which a second fault is added; and second faults that are fitted on beyond a first look. */
const BASES = 3;

/**
 * Every explanation of the readings, fitted and ranked: a sound ring and each fault of the list by itself; points that
 * read high or open beside the leading ones; and, where that leaves something over, a second fault beside the first.
 */
export function searched(problem: Problem): readonly Ranked[] {
  const asRead = fitted(problem, SOUND);
  const sound = plain(asRead);
  const listed = EXPLANATIONS.filter(({ lastly }) => lastly !== true);
  const singles = [asRead, ...beside(problem, sound, listed)];
  const first = ranked(singles, problem);
  let found: readonly Fit[] = [...singles, ...pointsBeside(problem, first, WIDENED)];
  let kinds = ranked(found, problem);
  if (!leavesSomething(kinds[0], problem)) return kinds;
  const bases = basesOf(first, kinds, problem);
  const pairs = bases.flatMap((base) => beside(problem, base, listed));
  const last = [sound, ...bases].flatMap((base) => beside(problem, base, LAST));
  found = [...found, ...pairs, ...last, ...pointsBeside(problem, first, BASES)];
  kinds = ranked(found, problem);
  if (!leavesSomething(kinds[0], problem)) return kinds;
  return ranked(
    [...found, ...pointsBeside(problem, ranked(pairs.length > 0 ? pairs : found, problem), WIDENED)],
    problem,
  );
}

const LAST = EXPLANATIONS.filter(({ lastly }) => lastly === true);

/** Spurs and poor connections of points, and other states of open ones, beside the leading explanations and a sound ring. */
function pointsBeside(problem: Problem, kinds: readonly Ranked[], most: number): readonly Fit[] {
  // A sound ring with a spur is the commonest of all, however ill the ring alone explains it.
  return kinds
    .filter(({ none }) => none !== true)
    .filter(({ best }, i) => i < most || plain(best).hypothesis.faults.length === 0)
    .flatMap(({ best }) => [...otherOpenPoints(problem, best), ...withPoints(problem, best)]);
}

/** Whether an explanation leaves so much over, or takes so many faults, that two of the ring itself may be likelier. */
function leavesSomething(leader: Ranked | undefined, { observed }: Problem): boolean {
  if (leader === undefined || leader.none === true) return true;
  const { hypothesis, cost } = leader.best;
  const others = hypothesis.faults.filter(({ key }) => !key.startsWith("spur")).length;
  return others > 1 || hypothesis.faults.length > 2 || cost > observed.length + Math.sqrt(2 * observed.length);
}

/** The explanations that lead by one fault and with points, and the best that leaves an end unexplained. */
function basesOf(first: readonly Ranked[], kinds: readonly Ranked[], problem: Problem): readonly Fit[] {
  const able = (among: readonly Ranked[]) =>
    among.filter(({ best, none }) => none !== true && plain(best).hypothesis.faults.length > 0);
  const partly = able(first).filter(({ best }) => openUnexplained(best, problem).length > 0);
  const leading = [...able(first).slice(0, BASES), ...able(kinds).slice(0, 1), ...partly.slice(0, BASES)];
  return [...new Map(leading.map(({ best }) => [keyOf(plain(best).hypothesis), plain(best)])).values()];
}

/** Without faults of points that have no size: what else is supposed may explain them. */
function plain(one: Fit): Fit {
  const isKept = ({ point, sizes, takes }: Fault) => point === undefined || sizes.length > 0 || takes !== undefined;
  return { ...one, hypothesis: { faults: one.hypothesis.faults.filter(isKept) } };
}

/** A display that ends below this, in Ω, does not say that a conductor is open. */
const NOT_OPEN = 5;

function openUnexplained({ expected }: Fit, { observed }: Problem): readonly Conductor[] {
  return CONDUCTORS.filter((_, i) => {
    const one = observed[i];
    return one?.bound === "above" && one.shown > NOT_OPEN && Number.isFinite(expected[i]);
  });
}

/** Explanations of the list beside a base. */
function beside(problem: Problem, base: Fit, explanations: readonly Explanation[]): readonly Fit[] {
  const around: Around = { problem, base, open: openUnexplained(base, problem) };
  return explanations
    .filter((one) => isDue(one, around))
    .flatMap(({ tried }) =>
      (tried?.(around) ?? []).flatMap((one) =>
        "inLeg" in one ? inEveryLeg(around, one.inLeg, one) : [withFault(around, one.fault, one)],
      ),
    );
}

/** While an end reads open unexplained, only what opens it is tried; and that only then, or where an end may hide it. */
function isDue({ opens = false }: Explanation, { open, base }: Around): boolean {
  return opens ? open.length > 0 || base.hypothesis.faults.length > 0 : open.length === 0;
}

type Start = Omit<Tried, "fault" | "inLeg">;

function withFault(around: Around, fault: Fault, start: Start): Fit {
  const { problem, base } = around;
  return fitted(problem, { faults: [...base.hypothesis.faults, fault] }, startOf(base, fault, start));
}

/** The base's parameters with sizes of the fault put in. */
function startOf({ values, hypothesis }: Fit, fault: Fault, { sizes, places, line = 1 }: Start): Float64Array {
  const from = positionsAt(hypothesis);
  const start = Float64Array.from([
    ...values.slice(0, from),
    ...(sizes ?? fault.sizes.map(({ value }) => value)),
    ...(places ?? values.slice(from)),
  ]);
  start[LINE] = (start[LINE] as number) + Math.log(line);
  return start;
}

/** One fit for each leg the fault may lie in: by the sizes of a fit in the middle leg, the likeliest refined. */
function inEveryLeg(around: Around, inLeg: (leg: number) => Fault, start: Start): readonly Fit[] {
  const { problem, base } = around;
  const { legs, input } = problem;
  const { faults } = base.hypothesis;
  const isFirst = faults.length === 0;
  const hypothesis = (leg: number): Hypothesis => ({ faults: [...faults, inLeg(leg)] });
  const numbers = legsTried(legs, isFirst ? legs : MOST_BESIDE);
  const even = input.points.map((_, i) => (i + 1) / (input.points.length + 1));
  if (isFirst && start.sizes === undefined && legs <= ALL_REFINED)
    return numbers.map((leg) => fitted(problem, hypothesis(leg)));
  const places = isFirst ? even : undefined;
  const middle = fitted(
    problem,
    hypothesis(legs >> 1),
    startOf(base, inLeg(legs >> 1), { ...start, ...(places && { places }) }),
    STEPS,
  );
  // Distances fitted to a fault in the middle lead astray; sizes do not.
  const sizes = [...middle.values.slice(0, positionsAt({ faults: [...faults, inLeg(0)] }))];
  const from = Float64Array.from([...sizes, ...(places ?? base.values.slice(positionsAt(base.hypothesis)))]);
  const tried = refined(problem, numbers.map(hypothesis), from, isFirst ? REFINED : REFINED_BESIDE);
  return isFirst ? tried : [...tried, ...firstAgain(problem, tried, legs)];
}

/** Of a ring with more legs a second fault is tried in so many, evenly. */
const MOST_BESIDE = 24;

function legsTried(legs: number, most: number): readonly number[] {
  return Array.from({ length: Math.min(legs, most) }, (_, i) => Math.floor(i * Math.max(1, legs / most)));
}

/** Hypotheses at one start, the likeliest of them refined. */
function refined(
  problem: Problem,
  hypotheses: readonly Hypothesis[],
  start: Float64Array,
  most: number,
): readonly Fit[] {
  const tried = hypotheses.map((one) => fitted(problem, one, start, 0));
  const best = [...tried].sort((a, b) => weightOf(a, problem) - weightOf(b, problem)).slice(0, most);
  return tried.map((one) => (best.includes(one) ? fit(problem, one.hypothesis, one.values, STEPS) : one));
}

/** The leg of the first fault tried again, the second where it fits best. */
function firstAgain(problem: Problem, tried: readonly Fit[], legs: number): readonly Fit[] {
  const [best] = [...tried].sort((a, b) => weightOf(a, problem) - weightOf(b, problem));
  if (best === undefined) return [];
  const { faults } = plain(best).hypothesis;
  const i = faults.findIndex(({ inLeg }) => inLeg !== undefined);
  const first = faults[i];
  if (first?.inLeg === undefined || i === faults.length - 1) return [];
  const move = first.inLeg;
  const others = legsTried(legs, MOST_BESIDE).filter((leg) => leg !== first.leg);
  const hypotheses = others.map((leg): Hypothesis => ({ faults: faults.with(i, move(leg)) }));
  return refined(problem, hypotheses, best.values, REFINED_BESIDE);
}

/** The fit of a hypothesis, with states of the points where readings are open that it does not make open. */
function fitted(problem: Problem, hypothesis: Hypothesis, start?: Float64Array, most?: number): Fit {
  if (!problem.observed.some(({ asked, bound }) => asked.point >= 0 && bound === "above"))
    return fit(problem, hypothesis, start, most);
  const from = start ?? fit(problem, hypothesis, undefined, 0).values;
  const expected = new Float64Array(problem.asked.length);
  predict(hypothesis, from, problem.asked, expected);
  const points = openStates(problem, expected).map(([first]) => first);
  return fit(problem, { faults: [...hypothesis.faults, ...points] }, from, most);
}

/** The leading explanation fitted in every leg, so that the probabilities of its places are those of the best fits. */
export function withEveryLeg(kinds: readonly Ranked[], problem: Problem): readonly Ranked[] {
  const [leader, ...others] = kinds;
  if (leader === undefined || leader.members.length === 1) return kinds;
  const again = leader.members.map(({ fit: one }, i) =>
    i < MOST_LEGS ? fit(problem, one.hypothesis, one.values, MOST_STEPS) : one,
  );
  const rest = others.filter(({ none }) => none !== true);
  return ranked([...again, ...rest.flatMap(({ members }) => members.map((one) => one.fit))], problem);
}

const MOST_LEGS = 24;
const MOST_STEPS = 3;
