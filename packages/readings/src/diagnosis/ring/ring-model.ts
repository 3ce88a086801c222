import { type Asked, CONDUCTORS, OF_PAIR, type Pair } from "./asked.ts";

/** Stands for a connection that is not there in sums of resistances, Ω; small enough that a sum loses no milliohm of the rest. */
export const OPEN = 1e13;
/** What exceeds this is no connection, Ω. */
const NO_WAY = 1e9;

/** Something in a conductor's way, at a part of the ring's length, Ω. */
interface Stop {
  readonly conductor: number;
  readonly at: number;
  readonly ohms: number;
}

/** A second way from one place of the ring to another, beside some of its conductors. */
interface Bridge {
  readonly from: number;
  readonly to: number;
  /** By conductor; {@link OPEN} for one that it leaves alone. */
  readonly ohms: readonly number[];
}

/** What is so at a point beside the ring: conductors at each other's terminals, or resistance on the way to the terminals. */
interface Beside {
  readonly point: number;
  readonly exchanged?: readonly [number, number];
  /** Ω on the way to each conductor's terminal. */
  readonly ohms?: readonly number[];
}

/** Where a place of a conductor stands on the strand it belongs to, Ω. Written over from reading to reading. */
interface Standing {
  strand: number;
  before: number;
  after: number;
  /** Resistance that is in neither way round, only in the way to the place itself. */
  stub: number;
}

const nowhere = (): Standing => ({ strand: 0, before: 0, after: 0, stub: 0 });

/**
 * What a ring would show, in Ω, without the errors of the meter. Every conductor is a strand between two ends at the
 * board; joining ends makes chains or loops of strands, so that a reading is one way round beside the other. A bridge
 * is taken into a strand as a star. Places run from 0 at the outgoing end to 1 at the returning one, by length.
 * Explanations say what is so of it; then it is read.
 */
export class RingModel {
  /** Ω of each sound conductor from end to end. */
  readonly whole: readonly number[];
  readonly #stops: Stop[] = [];
  readonly #beside: Beside[] = [];
  #bridge: Bridge | undefined;
  #crossing: { readonly pair: readonly [number, number]; readonly at: number } | undefined;
  readonly #sameEnds = new Set<Pair>();
  /** What is added to r1, rn, r2 and to readings at points, Ω. */
  readonly #leads = [0, 0, 0, 0];
  #columns: readonly number[] = [0, 1, 2];
  readonly #from = nowhere();
  readonly #to = nowhere();
  #listsExchanged = false;

  constructor(line: number, neutral: number, cpc: number) {
    this.whole = [line, neutral, cpc];
  }

  /** A resistance in a conductor, or its end. */
  stop(conductor: number, at: number, ohms: number): void {
    this.#stops.push({ conductor, at, ohms });
  }

  bridge(from: number, to: number, ohms: readonly number[]): void {
    this.#bridge = { from, to, ohms };
  }

  /** Two conductors change places for good. */
  cross(pair: Pair, at: number): void {
    this.#crossing = { pair: OF_PAIR[pair], at };
  }

  /** Ends of one side were joined for the readings of a pair. */
  joinSameEnds(pair: Pair): void {
    this.#sameEnds.add(pair);
  }

  /** Ω more in r1 (0), rn (1), r2 (2) or the readings at points (3). */
  addLeads(reading: number, ohms: number): void {
    this.#leads[reading] = (this.#leads[reading] as number) + ohms;
  }

  /** What stands in the columns of r1, rn and r2 is that of these conductors. */
  writeColumns(conductors: readonly number[]): void {
    this.#columns = conductors;
  }

  /** The lists of line to neutral and line to cpc readings changed places. */
  exchangeLists(): void {
    this.#listsExchanged = !this.#listsExchanged;
  }

  atPoint(beside: Beside): void {
    this.#beside.push(beside);
  }

  /** One reading; infinite where nothing connects. `at` is the place of its point. */
  read(asked: Asked, at: number): number {
    const ohms = asked.point < 0 ? this.#end(asked) : this.#point(asked, at);
    return ohms < NO_WAY ? ohms : Number.POSITIVE_INFINITY;
  }

  #end({ conductor = "line" }: Asked): number {
    const column = CONDUCTORS.indexOf(conductor);
    const c = this.#columns[column] as number;
    const ohms = this.#continues(c) === c ? this.#total(c) : OPEN;
    return ohms + (this.#leads[column] as number);
  }

  #point(asked: Asked, at: number): number {
    const pair = this.#written(asked.pair);
    let [u, v] = OF_PAIR[asked.terminals ?? pair];
    let beside = this.#leads[3] as number;
    for (const { point, exchanged, ohms } of this.#beside) {
      if (point !== asked.point) continue;
      if (exchanged !== undefined) {
        const [a, b] = exchanged;
        const other = (c: number) => (c === a ? b : c === b ? a : c);
        [u, v] = [other(u), other(v)];
      }
      if (ohms !== undefined) beside += (ohms[u] as number) + (ohms[v] as number);
    }
    return this.#across(u, v, at, asked, pair) + beside;
  }

  #written(pair: Pair): Pair {
    if (!this.#listsExchanged || pair === "neutral-cpc") return pair;
    return pair === "line-neutral" ? "line-cpc" : "line-neutral";
  }

  /** Which end each end is joined to: conductor c has its outgoing end at 2c and its returning one at 2c + 1. */
  #links({ arrangement }: Asked, pair: Pair): Int8Array {
    const links = new Int8Array(6).fill(-1);
    const join = (a: number, b: number) => {
      links[a] = b;
      links[b] = a;
    };
    const [u, v] = OF_PAIR[pair];
    if (arrangement === "joined-at-one-end") join(2 * u, 2 * v);
    else if (arrangement === "cross-connected") {
      const same = this.#sameEnds.has(pair) ? 0 : 1;
      join(2 * u, 2 * v + same);
      join(2 * u + 1, 2 * v + 1 - same);
    }
    return links;
  }

  #across(u: number, v: number, at: number, asked: Asked, pair: Pair): number {
    const [from, to] = [this.#from, this.#to];
    this.#stand(from, u, at);
    this.#stand(to, v, at);
    const stubs = from.stub + to.stub;
    if (this.#crossing === undefined) return this.#aroundOf(u, v, asked, pair) + stubs;
    const links = this.#links(asked, pair);
    const on = this.#way(from, to, true, links);
    const back = this.#way(from, to, false, links);
    return inParallel(on, back) + stubs;
  }

  /** Both ways round, where every conductor closes upon itself. */
  #aroundOf(u: number, v: number, { arrangement }: Asked, pair: Pair): number {
    const [a, b] = OF_PAIR[pair];
    // A conductor whose ends are not joined hangs free.
    if (!((u === a && v === b) || (u === b && v === a))) return OPEN;
    const [from, to] = [this.#from, this.#to];
    if (arrangement === "joined-at-one-end") return from.before + to.before;
    if (this.#sameEnds.has(pair)) return inParallel(from.before + to.before, from.after + to.after);
    return inParallel(from.before + to.after, from.after + to.before);
  }

  /** Resistance from one place to another, leaving towards the returning end or towards the outgoing one. */
  #way(from: Standing, to: Standing, onwards: boolean, links: Int8Array): number {
    let sum = onwards ? from.after : from.before;
    let end = onwards ? this.#endOf(from.strand) : 2 * from.strand;
    for (let i = 0; i < 3; i++) {
      const next = links[end] as number;
      if (next < 0) return OPEN;
      const forward = next % 2 === 0;
      const strand = forward ? next / 2 : this.#continues((next - 1) / 2);
      if (strand === to.strand) return sum + (forward ? to.before : to.after);
      if (strand === from.strand) return OPEN;
      sum += this.#total(strand);
      end = forward ? this.#endOf(strand) : 2 * strand;
    }
    return OPEN;
  }

  /** The returning end at which the strand that leaves as this conductor arrives. */
  #endOf(strand: number): number {
    return 2 * this.#continues(strand) + 1;
  }

  /** The conductor as which one goes on past a place where two change places. */
  #continues(conductor: number): number {
    if (this.#crossing === undefined) return conductor;
    const [a, b] = this.#crossing.pair;
    return conductor === a ? b : conductor === b ? a : conductor;
  }

  #total(strand: number): number {
    const goesOn = this.#continues(strand);
    if (goesOn !== strand && this.#crossing !== undefined) {
      const { at } = this.#crossing;
      return this.#run(strand, 0, at) + this.#run(goesOn, at, 1);
    }
    const bridge = this.#bridge;
    if (bridge === undefined) return this.#run(strand, 0, 1);
    const { from, to, ohms } = bridge;
    const across = inParallel(this.#run(strand, from, to), ohms[strand] as number);
    return this.#run(strand, 0, from) + across + this.#run(strand, to, 1);
  }

  #stand(here: Standing, c: number, at: number): void {
    here.strand = c;
    here.stub = 0;
    const other = this.#continues(c);
    if (other !== c && this.#crossing !== undefined) {
      const cross = this.#crossing.at;
      if (at <= cross) {
        here.before = this.#run(c, 0, at);
        here.after = this.#run(c, at, cross) + this.#run(other, cross, 1);
      } else {
        here.strand = other;
        here.before = this.#run(other, 0, cross) + this.#run(c, cross, at);
        here.after = this.#run(c, at, 1);
      }
    } else if (this.#bridge !== undefined) this.#standBridged(here, c, at, this.#bridge);
    else {
      here.before = this.#run(c, 0, at);
      here.after = this.#run(c, at, 1);
    }
  }

  #standBridged(here: Standing, c: number, at: number, { from, to, ohms }: Bridge): void {
    const beside = ohms[c] as number;
    if (at > from && at < to) {
      // The triangle of the two stretches and the bridge as a star.
      const [near, far] = [this.#run(c, from, at), this.#run(c, at, to)];
      const sum = near + far + beside;
      here.before = this.#run(c, 0, from) + (near * beside) / sum;
      here.after = this.#run(c, to, 1) + (far * beside) / sum;
      here.stub = (near * far) / sum;
      return;
    }
    const across = inParallel(this.#run(c, from, to), beside);
    here.before = at <= from ? this.#run(c, 0, at) : this.#run(c, 0, from) + across + this.#run(c, to, at);
    here.after = at <= from ? this.#run(c, at, from) + across + this.#run(c, to, 1) : this.#run(c, at, 1);
  }

  /** A conductor from one place to another, with what is in its way, Ω. */
  #run(c: number, from: number, to: number): number {
    let sum = (to - from) * (this.whole[c] as number);
    for (const { conductor, at, ohms } of this.#stops) {
      if (conductor === c && at >= from && (at < to || (to === 1 && at === 1))) sum += ohms;
    }
    return sum;
  }
}

function inParallel(a: number, b: number): number {
  return a + b > 0 ? (a * b) / (a + b) : 0;
}
