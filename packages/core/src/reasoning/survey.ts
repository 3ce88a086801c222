import { Diagram, LEAVES } from "./diagram.ts";

/** Something that has a diagram. */
interface HasDiagram {
  readonly diagram: Diagram;
}

/** Nodes reachable from a root, children before parents. */
export function reachable({ diagram }: HasDiagram, root: number): readonly number[] {
  return diagram.below(root);
}

/** Bit set of the leaves that a function can still take: the union over every completion of what is not known. */
export function possibleLeaves({ diagram }: HasDiagram, root: number, masks: readonly number[]): number {
  return root < LEAVES ? 1 << root : diagram.leavesWithin(root, masks);
}

/** How often each leaf comes up when every open value is as likely as the next: shares that sum to one. */
export function sharesOf(compiled: HasDiagram, root: number, masks: readonly number[]): readonly number[] {
  const { diagram } = compiled;
  const done = new Map<number, readonly number[]>();
  const sharesFrom = (node: number): readonly number[] =>
    node < LEAVES
      ? Array.from({ length: LEAVES }, (_, leaf) => (leaf === node ? 1 : 0))
      : (done.get(node) as readonly number[]);
  for (const node of reachable(compiled, root)) {
    const mask = masks[diagram.variableOf(node)] as number;
    const children = diagram.childrenOf(node).filter((_, value) => (mask & (1 << value)) !== 0);
    const sum = new Array<number>(LEAVES).fill(0);
    for (const child of children)
      for (const [leaf, share] of sharesFrom(child).entries())
        sum[leaf] = (sum[leaf] as number) + share / children.length;
    done.set(node, sum);
  }
  return sharesFrom(root);
}

/** The numbers of the bits that are set. */
export function bitsOf(mask: number): readonly number[] {
  const bits: number[] = [];
  for (let bit = 0; mask >> bit > 0; bit++) if (mask & (1 << bit)) bits.push(bit);
  return bits;
}

/** A function with every variable that has one value left put in. */
export function settledIn(compiled: HasDiagram, root: number, masks: readonly number[]): number {
  return masks.reduce((node, mask, variable) => {
    const isSingle = mask !== 0 && (mask & (mask - 1)) === 0;
    return isSingle ? compiled.diagram.restrict(node, variable, 31 - Math.clz32(mask)) : node;
  }, root);
}

/** A function in a diagram of its own, in which nothing tells apart what is not possible. */
export interface Narrowed extends HasDiagram {
  readonly root: number;
}

/**
 * What is left of a function once only the values of the masks count: two functions that agree on every completion are
 * the same, so it depends on exactly the variables that can still change it. A variable narrowed to values that it does
 * not tell apart is none of them. It stands in a diagram of its own: that of the subject does not grow with what is asked.
 */
export function narrowedTo({ diagram }: HasDiagram, root: number, masks: readonly number[]): Narrowed {
  const own = new Diagram(diagram.sizes);
  const done = new Map<number, number>();
  const narrowed = (node: number): number => (node < LEAVES ? node : (done.get(node) as number));
  for (const node of reachable({ diagram }, root)) {
    const variable = diagram.variableOf(node);
    const mask = masks[variable] as number;
    const children = diagram.childrenOf(node);
    const first = narrowed(children[bitsOf(mask)[0] ?? 0] as number);
    done.set(
      node,
      own.node(
        variable,
        children.map((child, value) => (mask & (1 << value) ? narrowed(child) : first)),
      ),
    );
  }
  return { diagram: own, root: narrowed(root) };
}
