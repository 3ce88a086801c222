/**
 * Decision diagrams over facts of a few values each: a function is a number, equal functions are the same number, and
 * anything that has to be true of every completion of the unknown is a walk over the diagram instead of over the
 * completions. Leaves are whole numbers from 0 to {@link LEAVES} − 1; every other number is a node that asks one variable.
 */
export const LEAVES = 8;

/** Functions whose nodes are kept in a list; beyond them the lists are begun anew. */
const MOST_LISTS = 1000;

/** More nodes than any subject should ever need; a subject beyond it is refused at load rather than left to grow. */
const MOST_NODES = 200_000;

export class Diagram {
  /** Number of values of each variable, in the order in which they are asked. */
  readonly sizes: readonly number[];
  readonly #variable: number[] = new Array(LEAVES).fill(Number.MAX_SAFE_INTEGER);
  readonly #children: (readonly number[])[] = new Array(LEAVES).fill(NONE);
  readonly #known = new Map<string, number>();
  readonly #restricted = new Map<string, number>();
  readonly #supports = new Map<number, readonly number[]>();
  readonly #below = new Map<number, readonly number[]>();
  /** The walk in which a node was last come to, by node, and the number of the walk under way. */
  #come = new Uint32Array(64);
  #walk = 0;

  constructor(sizes: readonly number[]) {
    this.sizes = sizes;
  }

  /** Number of nodes made so far, leaves included; node numbers are below it, and a child's number is below its parent's. */
  get count(): number {
    return this.#variable.length;
  }

  variableOf(node: number): number {
    return this.#variable[node] as number;
  }

  childrenOf(node: number): readonly number[] {
    return this.#children[node] as readonly number[];
  }

  /** The function that asks `variable` and goes on as the child of its value. */
  node(variable: number, children: readonly number[]): number {
    const first = children[0] as number;
    if (children.every((child) => child === first)) return first;
    const key = `${variable}:${children.join()}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const made = this.#variable.length;
    if (made >= MOST_NODES) throw new RangeError(`A subject needs more than ${MOST_NODES} decision nodes.`);
    this.#variable.push(variable);
    this.#children.push(children);
    this.#known.set(key, made);
    return made;
  }

  /** 1 where the variable has one of the values, else 0. */
  among(variable: number, values: readonly number[]): number {
    const size = this.sizes[variable] as number;
    return this.node(
      variable,
      Array.from({ length: size }, (_, value) => (values.includes(value) ? 1 : 0)),
    );
  }

  /** The function whose value is `combine` of the values of two functions. */
  apply(combine: (a: number, b: number) => number, a: number, b: number): number {
    const done = new Map<number, number>();
    const go = (x: number, y: number): number => {
      if (x < LEAVES && y < LEAVES) return combine(x, y);
      const key = x * MOST_NODES + y;
      const known = done.get(key);
      if (known !== undefined) return known;
      const variable = Math.min(this.variableOf(x), this.variableOf(y));
      const xs = this.variableOf(x) === variable ? this.childrenOf(x) : undefined;
      const ys = this.variableOf(y) === variable ? this.childrenOf(y) : undefined;
      const children = Array.from({ length: this.sizes[variable] as number }, (_, value) =>
        go(xs === undefined ? x : (xs[value] as number), ys === undefined ? y : (ys[value] as number)),
      );
      const made = this.node(variable, children);
      done.set(key, made);
      return made;
    };
    return go(a, b);
  }

  /** The function with each leaf replaced. */
  map(change: (leaf: number) => number, a: number): number {
    return this.apply((leaf) => change(leaf), a, 0);
  }

  /** The function that is left once the variable has the value. */
  restrict(node: number, variable: number, value: number): number {
    if (this.variableOf(node) > variable) return node;
    if (this.variableOf(node) === variable) return this.childrenOf(node)[value] as number;
    const key = `${node}:${variable}:${value}`;
    const known = this.#restricted.get(key);
    if (known !== undefined) return known;
    const made = this.node(
      this.variableOf(node),
      this.childrenOf(node).map((child) => this.restrict(child, variable, value)),
    );
    this.#restricted.set(key, made);
    return made;
  }

  /** The variables a function depends on, ascending. */
  support(node: number): readonly number[] {
    if (node < LEAVES) return NONE;
    const known = this.#supports.get(node);
    if (known !== undefined) return known;
    const found = new Set([this.variableOf(node)]);
    for (const child of this.childrenOf(node)) for (const variable of this.support(child)) found.add(variable);
    const made = [...found].sort((a, b) => a - b);
    this.#supports.set(node, made);
    return made;
  }

  /** The nodes of a function, children before parents, its own last; leaves are left out. */
  below(root: number): readonly number[] {
    const known = this.#below.get(root);
    if (known !== undefined) return known;
    const found = new Set<number>();
    const stack = [root];
    while (stack.length > 0) {
      const node = stack.pop() as number;
      if (node < LEAVES || found.has(node)) continue;
      found.add(node);
      stack.push(...this.childrenOf(node));
    }
    const made = [...found].sort((a, b) => a - b);
    if (this.#below.size >= MOST_LISTS) this.#below.clear();
    this.#below.set(root, made);
    return made;
  }

  /** Bit set of the leaves that are come to by the values of the masks; no other branch is looked at. */
  leavesWithin(root: number, masks: readonly number[]): number {
    if (this.#come.length < this.count) this.#come = new Uint32Array(2 * this.count);
    this.#walk = this.#walk === 0xffffffff ? this.#begunAnew() : this.#walk + 1;
    return this.#leavesFrom(root, masks);
  }

  #leavesFrom(node: number, masks: readonly number[]): number {
    if (node < LEAVES) return 1 << node;
    if (this.#come[node] === this.#walk) return 0;
    this.#come[node] = this.#walk;
    const mask = masks[this.#variable[node] as number] as number;
    const children = this.#children[node] as readonly number[];
    let leaves = 0;
    for (let value = 0; value < children.length; value++)
      if (mask & (1 << value)) leaves |= this.#leavesFrom(children[value] as number, masks);
    return leaves;
  }

  #begunAnew(): number {
    this.#come.fill(0);
    return 1;
  }

  /** The leaf reached when every variable has one value. */
  at(node: number, values: readonly number[]): number {
    let now = node;
    while (now >= LEAVES) now = this.childrenOf(now)[values[this.variableOf(now)] as number] as number;
    return now;
  }
}

const NONE: readonly number[] = Object.freeze([]);
