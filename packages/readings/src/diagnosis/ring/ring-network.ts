import { type NetworkPlace, type Resistor, SolvedNetwork } from "../../networks/index.ts";
import { CPC_RATIO, LINE, NEUTRAL_RATIO, OWN } from "./parameters.ts";
import { type Arrangement, CONDUCTORS, OF_PAIR, type Pair, type RingState } from "./ring-state.ts";

/** A stretch of a conductor between two places of the ring, as a resistor of the network. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly resistor: number;
}

/**
 * The ring as a resistance network in one arrangement of its ends. Places run from 0 at the outgoing end to 1 at the
 * returning one, by length. `values` are the parameters of the fit; `cut` is the place within the leg the state speaks of.
 */
export class RingNetwork {
  readonly #resistors: Resistor[] = [];
  readonly #stretches: Stretch[][] = [[], [], []];
  readonly #solved: SolvedNetwork;
  #nodes = 6;

  constructor(state: RingState, values: Float64Array, cut: number, arrangement: Arrangement, pair: Pair) {
    const line = Math.exp(values[LINE] as number);
    const whole = [
      line,
      line * Math.exp(values[NEUTRAL_RATIO] as number),
      line * Math.exp(values[CPC_RATIO] as number),
    ];
    const [u, v] = OF_PAIR[pair];
    const needed = arrangement === "ends-apart" || state.kind === "crossed-in-leg" ? [0, 1, 2] : [u, v];
    if (state.kind === "interconnection") this.#interconnect(needed, whole, values);
    else if (state.kind === "open" || state.kind === "joint" || state.kind === "crossed-in-leg") {
      this.#cutAt(cut, needed, whole, state, values[OWN] as number);
    } else {
      // Of two rings crossed at the board, the returning end belongs to the other one.
      for (const c of needed)
        this.#stretch(c, 0, 1, 2 * c, state.kind === "crossed-rings" ? this.#node() : 2 * c + 1, whole);
    }
    this.#joinEnds(state, arrangement, pair);
    this.#solved = new SolvedNetwork(this.#nodes, this.#resistors);
  }

  endToEnd(conductor: number): number {
    return this.#solved.between(2 * conductor, 2 * conductor + 1);
  }

  /** Resistance between two conductors at a place of the ring. */
  across(first: number, second: number, at: number): number {
    return this.#solved.between(this.#place(first, at), this.#place(second, at));
  }

  #place(conductor: number, at: number): NetworkPlace {
    const stretches = this.#stretches[conductor] as Stretch[];
    // A conductor that is not part of the arrangement hangs free.
    if (stretches.length === 0) return 2 * conductor;
    const found = stretches.find(({ to }) => at <= to) ?? (stretches.at(-1) as Stretch);
    const part = (at - found.from) / (found.to - found.from);
    return { along: found.resistor, part: Math.min(1, Math.max(0, part)) };
  }

  #node(): number {
    this.#nodes += 1;
    return this.#nodes - 1;
  }

  #stretch(c: number, from: number, to: number, a: number, b: number, whole: readonly number[]): void {
    (this.#stretches[c] as Stretch[]).push({ from, to, resistor: this.#resistors.length });
    this.#resistors.push({ from: a, to: b, ohms: (to - from) * (whole[c] as number) });
  }

  #cutAt(
    cut: number,
    needed: readonly number[],
    whole: readonly number[],
    state: Extract<RingState, { leg: number }>,
    ohms: number,
  ): void {
    const before = needed.map(() => this.#node());
    for (const [k, c] of needed.entries()) {
      const near = before[k] as number;
      const name = CONDUCTORS[c];
      let far = near;
      if (state.kind === "joint" && state.conductor === name) {
        far = this.#node();
        this.#resistors.push({ from: near, to: far, ohms });
      } else if (state.kind === "open" && state.conductors.some((one) => one === name)) far = this.#node();
      else if (state.kind === "crossed-in-leg") {
        const [u, v] = OF_PAIR[state.pair];
        if (c === u) far = before[v] as number;
        if (c === v) far = before[u] as number;
      }
      this.#stretch(c, 0, cut, 2 * c, near, whole);
      this.#stretch(c, cut, 1, far, 2 * c + 1, whole);
    }
  }

  #interconnect(needed: readonly number[], whole: readonly number[], values: Float64Array): void {
    const [p, q, length] = [values[OWN] as number, values[OWN + 1] as number, values[OWN + 2] as number];
    for (const c of needed) {
      const [near, far] = [this.#node(), this.#node()];
      this.#stretch(c, 0, p, 2 * c, near, whole);
      this.#stretch(c, p, q, near, far, whole);
      this.#stretch(c, q, 1, far, 2 * c + 1, whole);
      this.#resistors.push({ from: near, to: far, ohms: length * (whole[c] as number) });
    }
  }

  #joinEnds(state: RingState, arrangement: Arrangement, pair: Pair): void {
    if (arrangement === "ends-apart") return;
    const [u, v] = OF_PAIR[pair];
    const sameEnds = state.kind === "same-ends-joined" && state.pairs.includes(pair);
    const link = (from: number, to: number) => this.#resistors.push({ from, to, ohms: 0 });
    if (arrangement === "joined-at-one-end") link(2 * u, 2 * v);
    else if (sameEnds) {
      link(2 * u, 2 * v);
      link(2 * u + 1, 2 * v + 1);
    } else {
      link(2 * u, 2 * v + 1);
      link(2 * v, 2 * u + 1);
    }
  }
}
