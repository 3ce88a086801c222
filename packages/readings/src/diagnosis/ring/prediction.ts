import { CPC_RATIO, isSized, LINE, NEUTRAL_RATIO, OFFSET, OWN, ownCount, positionsAt, SCALE } from "./parameters.ts";
import { RingNetwork } from "./ring-network.ts";
import { type Asked, CONDUCTORS, type Hypothesis, OF_PAIR, type PointState, type RingState } from "./ring-state.ts";

/** The place of the cut a state speaks of: the middle of its leg; −1 where it has none. */
export function cutOf(ring: RingState, values: Float64Array, from: number): number {
  if (!("leg" in ring)) return -1;
  const points = values.length - from;
  const before = ring.leg === 0 ? 0 : (values[from + ring.leg - 1] as number);
  const after = ring.leg >= points ? 1 : (values[from + ring.leg] as number);
  return (before + after) / 2;
}

/** The networks of the readings, one for each run of readings that are taken in one arrangement. */
export type Networks = readonly RingNetwork[];

/**
 * What a hypothesis says every reading would show, Ω, before scale and offset of the meter but with leads that were not
 * nulled: by the network, from the parameters. Infinite where nothing connects. `cut` keeps the place of a fault while
 * points are moved for a derivative. `touched` leaves out readings that are known not to change: those stay as they are
 * in `out`. Returns the networks.
 */
export function predict(
  hypothesis: Hypothesis,
  values: Float64Array,
  asked: readonly Asked[],
  out: Float64Array,
  cut = cutOf(hypothesis.ring, values, positionsAt(hypothesis)),
  touched?: (one: Asked) => boolean,
): Networks {
  const from = positionsAt(hypothesis);
  const networks: RingNetwork[] = [];
  let network: RingNetwork | undefined;
  let last: Asked | undefined;
  for (let i = 0; i < asked.length; i++) {
    const one = asked[i] as Asked;
    if (touched !== undefined && !touched(one)) continue;
    if (network === undefined || last === undefined || !isAlike(one, last)) {
      network = new RingNetwork(hypothesis.ring, values, cut, one.arrangement, one.pair);
      networks.push(network);
    }
    last = one;
    out[i] = readingAt(hypothesis, values, network, one, from);
  }
  return networks;
}

/** The readings again, with points moved and the conductors as they were when the networks were made. */
export function predictMoved(
  hypothesis: Hypothesis,
  values: Float64Array,
  asked: readonly Asked[],
  out: Float64Array,
  networks: Networks,
): void {
  const from = positionsAt(hypothesis);
  let k = -1;
  for (let i = 0; i < asked.length; i++) {
    const one = asked[i] as Asked;
    if (i === 0 || !isAlike(one, asked[i - 1] as Asked)) k++;
    out[i] = readingAt(hypothesis, values, networks[k] as RingNetwork, one, from);
  }
}

function isAlike(one: Asked, other: Asked): boolean {
  return one.arrangement === other.arrangement && one.pair === other.pair;
}

function readingAt(
  hypothesis: Hypothesis,
  values: Float64Array,
  network: RingNetwork,
  one: Asked,
  from: number,
): number {
  return one.point < 0 ? atBoard(hypothesis, values, network, one) : atPoint(hypothesis, values, network, one, from);
}

function atBoard({ ring }: Hypothesis, values: Float64Array, network: RingNetwork, one: Asked): number {
  const c = CONDUCTORS.indexOf(one.conductor ?? "line");
  return network.endToEnd(c) + leads(ring, values, (["r1", "rn", "r2"] as const)[c]);
}

function leads(ring: RingState, values: Float64Array, reading: "r1" | "rn" | "r2" | undefined): number {
  if (ring.kind !== "leads-not-nulled") return 0;
  return ring.readings === "all" || ring.readings === reading ? (values[OWN] as number) : 0;
}

function atPoint(
  hypothesis: Hypothesis,
  values: Float64Array,
  network: RingNetwork,
  { pair, terminals = pair, point }: Asked,
  from: number,
): number {
  let [u, v] = OF_PAIR[terminals];
  let beside = leads(hypothesis.ring, values, undefined);
  let sized = OWN + ownCount(hypothesis);
  for (const state of hypothesis.points) {
    const size = isSized(state) ? (values[sized++] as number) : 0;
    if (state.point !== point) continue;
    if (state.kind === "swapped") [u, v] = [exchanged(state, u), exchanged(state, v)];
    else beside += added(state, size, values, u, v);
  }
  return network.across(u, v, values[from + point] as number) + beside;
}

function exchanged({ pair }: Extract<PointState, { kind: "swapped" }>, conductor: number): number {
  const [a, b] = OF_PAIR[pair];
  return conductor === a ? b : conductor === b ? a : conductor;
}

function added(
  state: Exclude<PointState, { kind: "swapped" }>,
  size: number,
  values: Float64Array,
  u: number,
  v: number,
): number {
  if (state.kind === "spur") return size * (wholeOf(values, u) + wholeOf(values, v));
  const c = CONDUCTORS.indexOf(state.conductor);
  if (c !== u && c !== v) return 0;
  return state.kind === "terminal" ? size : Number.POSITIVE_INFINITY;
}

/** End-to-end resistance of a sound conductor, Ω. */
function wholeOf(values: Float64Array, conductor: number): number {
  const ratio = conductor === 0 ? 0 : (values[conductor === 1 ? NEUTRAL_RATIO : CPC_RATIO] as number);
  return Math.exp((values[LINE] as number) + ratio);
}

/** What the meter would show for a resistance, by the common errors of the fit. */
export function shownFor(ohms: number, values: Float64Array): number {
  return ohms * (1 + (values[SCALE] as number)) + (values[OFFSET] as number);
}
