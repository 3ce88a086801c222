import type { Chance } from "../../examples/simulate/chance.ts";
import type {
  RingConductor,
  RingInput,
  RingPair,
  RingReading,
} from "../../packages/readings/src/diagnosis/ring/index.ts";
import { type Resistor, SolvedNetwork } from "../../packages/readings/src/networks/index.ts";

/** A fault put into a ring. Legs and points are numbered as in the diagnosis; lengths in m. */
export type Planted =
  | { readonly kind: "sound" }
  | { readonly kind: "open"; readonly conductors: readonly RingConductor[]; readonly leg: number }
  | { readonly kind: "joint"; readonly conductor: RingConductor; readonly leg: number; readonly ohms: number }
  | { readonly kind: "interconnection"; readonly from: number; readonly to: number; readonly metres: number }
  | { readonly kind: "crossed-in-leg"; readonly pair: RingPair; readonly leg: number }
  | { readonly kind: "crossed-rings" }
  | { readonly kind: "leads-not-nulled"; readonly readings: "all" | "r2"; readonly ohms: number }
  | { readonly kind: "same-ends-joined"; readonly pairs: readonly RingPair[] }
  | { readonly kind: "spur"; readonly point: number; readonly metres: number }
  | { readonly kind: "terminal"; readonly point: number; readonly conductor: RingConductor; readonly ohms: number }
  | { readonly kind: "swapped"; readonly point: number; readonly pair: RingPair };

export interface TrueRing {
  readonly metres: number;
  /** Distance of each point from the board, m. */
  readonly points: readonly number[];
  /** Ω/m of line, neutral and cpc as they are. */
  readonly perMetre: readonly [number, number, number];
  /** What the papers say: greatest Ω/m by size at the temperature of the test. */
  readonly nominal: readonly [number, number];
  readonly planted: Planted;
  /** A second fault in the same ring. */
  readonly also?: Planted;
}

const faultsOf = ({ planted, also }: TrueRing): readonly Planted[] =>
  also === undefined ? [planted] : [planted, also];

const NAMES: readonly RingConductor[] = ["line", "neutral", "cpc"];
const PAIR: Readonly<Record<RingPair, readonly [number, number]>> = {
  "line-neutral": [0, 1],
  "line-cpc": [0, 2],
  "neutral-cpc": [1, 2],
};

/** Sizes of ring cables, line/cpc, in mΩ/m at 20 °C: 2.5/1.5, 2.5/2.5, 4/1.5, 4/2.5 mm². */
const CABLES: readonly (readonly [number, number])[] = [
  [7.41, 12.1],
  [7.41, 12.1],
  [7.41, 12.1],
  [7.41, 7.41],
  [4.61, 12.1],
  [4.61, 7.41],
];

/** A ring of 30 to 100 m with uneven distances; every conductor about 3 % below the greatest resistance, ±1 %. */
export function drawRing(chance: Chance, count: number): Omit<TrueRing, "planted"> {
  const metres = chance.between(30, 100);
  const gaps = Array.from({ length: count + 1 }, () => 0.25 - 0.75 * Math.log(1 - chance.uniform()));
  const whole = gaps.reduce((a, b) => a + b, 0);
  let at = 0;
  const points = gaps.slice(0, count).map((gap) => {
    at += (gap / whole) * metres;
    return at;
  });
  const [line, cpc] = CABLES[Math.floor(chance.uniform() * CABLES.length)] as readonly [number, number];
  const warm = 1 + 0.004 * (chance.between(5, 25) - 20);
  const drawn = (milliohm: number) => (milliohm / 1000) * warm * chance.normal(0.97, 0.01);
  return {
    metres,
    points,
    perMetre: [drawn(line), drawn(line), drawn(cpc)],
    nominal: [(line / 1000) * warm, (cpc / 1000) * warm],
  };
}

/** A sound ring whose protective conductor is smaller than its line. */
export function ringOfTwoSizes(chance: Chance, count: number, metres?: number): TrueRing {
  for (;;) {
    const ring = drawRing(chance, count);
    if (ring.nominal[1] < 1.2 * ring.nominal[0]) continue;
    const part = (metres ?? ring.metres) / ring.metres;
    const points = ring.points.map((at) => at * part);
    return { ...ring, metres: ring.metres * part, points, planted: { kind: "sound" } };
  }
}

/**
 * The ring with a node at every point, in one arrangement of its ends: written apart from the diagnosis, which keeps
 * only the places of the fault. Nodes: conductor c at place k of 0 (outgoing end) to n + 1 (returning end).
 */
class FullRing {
  readonly #ring: TrueRing;
  readonly #resistors: Resistor[] = [];
  readonly #stride: number;
  #nodes: number;

  constructor(ring: TrueRing, joined: RingPair | undefined) {
    this.#ring = ring;
    this.#stride = ring.points.length + 2;
    this.#nodes = 3 * this.#stride;
    const { perMetre, points, metres } = ring;
    const stops = [0, ...points, metres];
    for (let c = 0; c < 3; c++)
      for (let k = 0; k + 1 < stops.length; k++)
        this.#leg(c, k, ((stops[k + 1] ?? 0) - (stops[k] ?? 0)) * (perMetre[c] ?? 0));
    for (const planted of faultsOf(ring)) {
      if (planted.kind !== "interconnection") continue;
      const nodes = [planted.from, planted.to];
      for (let c = 0; c < 3; c++) {
        const [from, to] = nodes.map((point) => this.at(c, point)) as [number, number];
        this.#resistors.push({ from, to, ohms: planted.metres * (perMetre[c] ?? 0) });
      }
    }
    if (joined === undefined) return;
    const [u, v] = PAIR[joined];
    const same = faultsOf(ring).some(({ kind, ...one }) => "pairs" in one && one.pairs.includes(joined));
    const end = (c: number) => c * this.#stride + this.#stride - 1;
    this.#resistors.push({ from: u * this.#stride, to: same ? v * this.#stride : end(v), ohms: 0 });
    this.#resistors.push({ from: end(u), to: same ? end(v) : v * this.#stride, ohms: 0 });
  }

  at(conductor: number, point: number): number {
    return conductor * this.#stride + 1 + point;
  }

  solved(): SolvedNetwork {
    return new SolvedNetwork(this.#nodes, this.#resistors);
  }

  #leg(c: number, k: number, ohms: number): void {
    const { points } = this.#ring;
    const name = NAMES[c] as RingConductor;
    const from = c * this.#stride + k;
    let to = from + 1;
    let more = 0;
    for (const planted of faultsOf(this.#ring)) {
      if (planted.kind === "crossed-rings" && k === points.length) to = this.#nodes++;
      if (!("leg" in planted) || planted.leg !== k) continue;
      if (planted.kind === "open" && planted.conductors.includes(name)) return;
      if (planted.kind === "joint" && planted.conductor === name) more += planted.ohms;
      if (planted.kind === "crossed-in-leg") {
        const [u, v] = PAIR[planted.pair];
        if (c === u) to += (v - u) * this.#stride;
        if (c === v) to -= (v - u) * this.#stride;
      }
    }
    this.#resistors.push({ from, to, ohms: ohms + more });
  }
}

export interface TrueReadings {
  readonly ends: readonly number[];
  readonly lineNeutral: readonly number[];
  readonly lineCpc: readonly number[];
}

/** What a perfect meter with nulled leads, and those of the planted mistake, would read, Ω. */
export function trueReadings(ring: TrueRing): TrueReadings {
  const { points, perMetre } = ring;
  const faults = faultsOf(ring);
  const open = new FullRing(ring, undefined).solved();
  const stride = points.length + 2;
  const leads = faults.reduce((sum, one) => sum + (one.kind === "leads-not-nulled" ? one.ohms : 0), 0);
  const all = faults.some((one) => one.kind === "leads-not-nulled" && one.readings === "all") ? leads : 0;
  const ends = [0, 1, 2].map((c) => open.between(c * stride, (c + 1) * stride - 1) + (c === 2 ? leads : all));
  const crossed = (pair: RingPair) => {
    const full = new FullRing(ring, pair);
    const solved = full.solved();
    return points.map((_, point) => {
      let [u, v] = PAIR[pair];
      let more = all;
      for (const planted of faults) {
        if (!("point" in planted) || planted.point !== point) continue;
        if (planted.kind === "swapped") {
          const [a, b] = PAIR[planted.pair];
          const other = (c: number) => (c === a ? b : c === b ? a : c);
          [u, v] = [other(u), other(v)];
        }
        if (planted.kind === "spur") more += planted.metres * ((perMetre[u] ?? 0) + (perMetre[v] ?? 0));
        if (planted.kind === "terminal" && [NAMES[u], NAMES[v]].includes(planted.conductor)) more += planted.ohms;
      }
      return solved.between(full.at(u, point), full.at(v, point)) + more;
    });
  };
  return { ends, lineNeutral: crossed("line-neutral"), lineCpc: crossed("line-cpc") };
}

/** A meter of ±(2 % + 2 digits), 0.01 Ω to the digit. */
const METER = Object.freeze({ ofReading: 0.02, digits: 2, resolution: 0.01 });

/**
 * The noise. Common to all readings of a ring: a scale uniform within ±1 % and an offset within ±0.01 Ω, half of the
 * meter's accuracy. Each reading: an error uniform within the other half, a contact of up to a few milliohms (the
 * magnitude of a normal deviate of 4 mΩ), and the rounding of the display.
 */
function readWith(chance: Chance): (ohms: number) => RingReading {
  const { ofReading, digits, resolution } = METER;
  const scale = chance.between(-0.5, 0.5) * ofReading;
  const offset = chance.between(-0.5, 0.5) * digits * resolution;
  const accuracy = { ofReading, digits };
  return (ohms) => {
    if (!(ohms < 99.9)) return { shown: 99.9, resolution: 0.1, bound: "above", accuracy };
    const half = 0.5 * (ohms * ofReading + digits * resolution);
    const error = chance.between(-half, half) + Math.abs(chance.normal(0, 0.004));
    const shown = Math.max(0, Math.round((ohms * (1 + scale) + offset + error) / resolution) * resolution);
    return { shown: Number(shown.toFixed(2)), resolution, bound: "exact", accuracy };
  };
}

/** Sizes the protective conductor may have in truth, mm², with their greatest resistances, mΩ/m at 20 °C. */
const CPC_SIZES: readonly (readonly [number, number])[] = [
  [1, 18.1],
  [1.5, 12.1],
  [2.5, 7.41],
];

const ratioOf = (value: number) => ({ value, deviation: value * 0.0286 });

/** The other sizes that a protective conductor no larger than the line may have. */
function otherSizes({ nominal: [line, cpc] }: TrueRing) {
  const lineAt20 = [4.61, 7.41].reduce((a, b) => (Math.abs(b / 1000 - line) < Math.abs(a / 1000 - line) ? b : a));
  return CPC_SIZES.map(([size, ohms]) => ({ size, ratio: ratioOf(ohms / lineAt20) })).filter(
    ({ ratio }) => ratio.value > 0.999 && Math.abs(Math.log(ratio.value / (cpc / line))) > 0.01,
  );
}

/** What the electrician has: readings, sizes, and the length paced out to ±15 % or not at all. */
export function inputOf(ring: TrueRing, chance: Chance): RingInput {
  const truth = trueReadings(ring);
  const read = readWith(chance);
  const [line, cpc] = ring.nominal;
  const [r1, rn, r2] = truth.ends.map(read) as [RingReading, RingReading, RingReading];
  const lineNeutral = truth.lineNeutral.map(read);
  const lineCpc = truth.lineCpc.map(read);
  const paced = ring.metres * chance.between(0.85, 1.15);
  return {
    r1,
    rn,
    r2,
    points: ring.points.map((_, i) => ({
      name: `socket ${i + 1}`,
      lineNeutral: lineNeutral[i] as RingReading,
      lineCpc: lineCpc[i] as RingReading,
    })),
    orderKnown: true,
    linePerMetre: { value: line * 0.97, deviation: line * 0.027 },
    neutralRatio: { value: 1, deviation: 0.0286 },
    cpcRatio: ratioOf(cpc / line),
    cpcSizes: otherSizes(ring),
    ...(chance.uniform() < 0.3 ? { length: { value: paced, deviation: paced * 0.09 } } : {}),
  };
}
