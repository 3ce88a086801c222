/** A resistor between two numbered nodes, Ω. Zero joins its nodes; infinite is no connection. */
export interface Resistor {
  readonly from: number;
  readonly to: number;
  readonly ohms: number;
}

/** A place in a network: a node, or a point along a resistor by the part of its resistance that lies before it, 0 to 1. */
export type Place = number | { readonly along: number; readonly part: number };

/** More nodes than this are refused: the matrix is held whole. */
export const MOST_NODES = 2000;

/**
 * A linear resistance network solved by nodal analysis. In each connected part one node is the reference; what remains
 * of the Laplacian is symmetric and positive definite, and its inverse gives every resistance and voltage.
 */
export class SolvedNetwork {
  readonly #resistors: readonly Resistor[];
  /** Connected part of each node. */
  readonly #part: Int32Array;
  /** Row of each node in the inverse; −1 for a reference. */
  readonly #row: Int32Array;
  readonly #inverse: Float64Array;
  readonly #size: number;

  /** Throws a RangeError for a resistance below zero or not a number, and for nodes that are not there. */
  constructor(nodes: number, resistors: readonly Resistor[]) {
    refuse(nodes, resistors);
    this.#resistors = resistors;
    const merged = joined(nodes, resistors, 0);
    this.#part = joined(nodes, resistors, Number.MAX_VALUE);
    const rowOf = new Int32Array(nodes).fill(-1);
    let size = 0;
    for (let node = 0; node < nodes; node++) {
      const isReference = merged[this.#part[node] as number] === node;
      if (merged[node] === node && !isReference) rowOf[node] = size++;
    }
    this.#row = rowOf.map((_, node) => rowOf[merged[node] as number] as number);
    this.#size = size;
    this.#inverse = inverted(eliminated(size, this.#row, resistors));
  }

  /** Resistance seen between two places, Ω; infinite where nothing connects them. */
  between(a: Place, b: Place): number {
    if (this.#partOf(a) !== this.#partOf(b)) return Number.POSITIVE_INFINITY;
    return this.#transfer(a, a) + this.#transfer(b, b) - 2 * this.#transfer(a, b);
  }

  /** Voltage between `a` and `b` for 1 A in at `into` and out at `outOf`; NaN where no current can flow so. */
  voltage(a: Place, b: Place, into: Place, outOf: Place): number {
    if (this.#partOf(into) !== this.#partOf(outOf)) return Number.NaN;
    if (this.#partOf(a) !== this.#partOf(b)) return Number.NaN;
    // Current in another part moves the whole of this one, and no two places of it against each other.
    if (this.#partOf(a) !== this.#partOf(into)) return 0;
    return this.#transfer(a, into) - this.#transfer(a, outOf) - this.#transfer(b, into) + this.#transfer(b, outOf);
  }

  #partOf(place: Place): number {
    const node = typeof place === "number" ? place : this.#resistor(place.along).from;
    const part = this.#part[node];
    if (part === undefined) throw new RangeError(`the network has no node ${node}`);
    return part;
  }

  #resistor(index: number): Resistor {
    const found = this.#resistors[index];
    if (found === undefined) throw new RangeError(`the network has no resistor ${index}`);
    if (found.ohms === Number.POSITIVE_INFINITY) throw new RangeError("a point along a connection that is not there");
    return found;
  }

  /**
   * Voltage of `a` against the reference for 1 A in at `b`. Along a resistor it is linear from each end to the place of
   * injection: a place is its two ends by their shares, and a rise of its own.
   */
  #transfer(a: Place, b: Place): number {
    if (typeof a === "number") return typeof b === "number" ? this.#kernel(a, b) : this.#mixed(a, b);
    if (typeof b === "number") return this.#mixed(b, a);
    const resistor = this.#resistor(a.along);
    const ends = (1 - a.part) * this.#mixed(resistor.from, b) + a.part * this.#mixed(resistor.to, b);
    if (a.along !== b.along) return ends;
    return ends + Math.min(a.part, b.part) * (1 - Math.max(a.part, b.part)) * resistor.ohms;
  }

  #mixed(node: number, { along, part }: Exclude<Place, number>): number {
    const { from, to } = this.#resistor(along);
    return (1 - part) * this.#kernel(node, from) + part * this.#kernel(node, to);
  }

  #kernel(a: number, b: number): number {
    const i = this.#row[a] as number;
    const j = this.#row[b] as number;
    return i < 0 || j < 0 ? 0 : (this.#inverse[i * this.#size + j] as number);
  }
}

function refuse(nodes: number, resistors: readonly Resistor[]): void {
  if (!Number.isInteger(nodes) || nodes < 0 || nodes > MOST_NODES) {
    throw new RangeError(`a network of ${nodes} nodes; from 0 to ${MOST_NODES} can be solved`);
  }
  const isNode = (node: number) => Number.isInteger(node) && node >= 0 && node < nodes;
  for (const { from, to, ohms } of resistors) {
    if (!(ohms >= 0)) throw new RangeError(`a resistance of ${ohms} Ω`);
    if (!isNode(from) || !isNode(to)) throw new RangeError(`a resistor from ${from} to ${to} among ${nodes} nodes`);
  }
}

/** The lowest node each node is joined to by resistances of no more than `most`. */
function joined(nodes: number, resistors: readonly Resistor[], most: number): Int32Array {
  const least = new Int32Array(nodes);
  for (let node = 0; node < nodes; node++) least[node] = node;
  for (const { from, to, ohms } of resistors) {
    if (ohms > most) continue;
    const [a, b] = [rootOf(least, from), rootOf(least, to)];
    if (a < b) least[b] = a;
    else least[a] = b;
  }
  for (let node = 0; node < nodes; node++) least[node] = rootOf(least, node);
  return least;
}

function rootOf(least: Int32Array, node: number): number {
  let at = node;
  while (least[at] !== at) {
    least[at] = least[least[at] as number] as number;
    at = least[at] as number;
  }
  return at;
}

/** What eliminates the nodes one after another, without a subtraction, so that no digit is lost between milliohms and kilohms. */
interface Elimination {
  /** Below the diagonal: share of a node's current that goes to each later one when it is eliminated. */
  readonly shares: Float64Array;
  /** Conductance of each node to all that were left when it was eliminated, the reference included, S. */
  readonly whole: Float64Array;
}

/**
 * The factors L and D of the reduced Laplacian L·D·Lᵀ, held as conductances: each diagonal is the sum of what a node is
 * joined to rather than a difference (Grassmann, Taksar and Heyman, 1985). Throws a RangeError where they overflow.
 */
function eliminated(size: number, row: Int32Array, resistors: readonly Resistor[]): Elimination {
  const between = new Float64Array(size * size);
  const toReference = new Float64Array(size);
  for (const { from, to, ohms } of resistors) {
    if (ohms === 0 || ohms === Number.POSITIVE_INFINITY) continue;
    const i = row[from] as number;
    const j = row[to] as number;
    if (i === j) continue;
    if (i < 0) toReference[j] = (toReference[j] as number) + 1 / ohms;
    else if (j < 0) toReference[i] = (toReference[i] as number) + 1 / ohms;
    else {
      between[i * size + j] = (between[i * size + j] as number) + 1 / ohms;
      between[j * size + i] = (between[j * size + i] as number) + 1 / ohms;
    }
  }
  const whole = new Float64Array(size);
  for (let k = 0; k < size; k++) {
    let sum = toReference[k] as number;
    for (let j = k + 1; j < size; j++) sum += between[k * size + j] as number;
    if (!(sum > 0 && sum < Number.POSITIVE_INFINITY))
      throw new RangeError("resistances too small or too large to be solved");
    whole[k] = sum;
    for (let i = k + 1; i < size; i++) {
      const share = (between[i * size + k] as number) / sum;
      between[i * size + k] = share;
      if (share === 0) continue;
      toReference[i] = (toReference[i] as number) + share * (toReference[k] as number);
      for (let j = k + 1; j < size; j++) {
        if (j !== i)
          between[i * size + j] = (between[i * size + j] as number) + share * (between[k * size + j] as number);
      }
    }
  }
  return { shares: between, whole };
}

function inverted({ shares, whole }: Elimination): Float64Array {
  const size = whole.length;
  const inverse = new Float64Array(size * size);
  for (let j = 0; j < size; j++) {
    const column = inverse.subarray(j * size, (j + 1) * size);
    column[j] = 1;
    for (let i = j + 1; i < size; i++) {
      let sum = 0;
      for (let k = j; k < i; k++) sum += (shares[i * size + k] as number) * (column[k] as number);
      column[i] = sum;
    }
    for (let k = size - 1; k >= 0; k--) {
      let sum = (column[k] as number) / (whole[k] as number);
      for (let i = k + 1; i < size; i++) sum += (shares[i * size + k] as number) * (column[i] as number);
      column[k] = sum;
    }
  }
  return inverse;
}
