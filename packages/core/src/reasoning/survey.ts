import type { Compiled } from "./compile.ts";
import { LEAVES } from "./diagram.ts";

/** Nodes reachable from a root, children before parents. */
export function reachable({ diagram }: Compiled, root: number): readonly number[] {
  const found = new Set<number>();
  const stack = [root];
  while (stack.length > 0) {
    const node = stack.pop() as number;
    if (node < LEAVES || found.has(node)) continue;
    found.add(node);
    stack.push(...diagram.childrenOf(node));
  }
  return [...found].sort((a, b) => a - b);
}

/** Bit set of the leaves that a function can still take: the union over every completion of what is not known. */
export function possibleLeaves(compiled: Compiled, root: number, masks: readonly number[]): number {
  if (root < LEAVES) return 1 << root;
  const { diagram } = compiled;
  const done = new Map<number, number>();
  const leavesFrom = (node: number): number => (node < LEAVES ? 1 << node : (done.get(node) as number));
  for (const node of reachable(compiled, root)) {
    const mask = masks[diagram.variableOf(node)] as number;
    let union = 0;
    for (const [value, child] of diagram.childrenOf(node).entries())
      if (mask & (1 << value)) union |= leavesFrom(child);
    done.set(node, union);
  }
  return leavesFrom(root);
}

/** How often each leaf comes up when every open value is as likely as the next: shares that sum to one. */
export function sharesOf(compiled: Compiled, root: number, masks: readonly number[]): readonly number[] {
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
export function settledIn(compiled: Compiled, root: number, masks: readonly number[]): number {
  return masks.reduce((node, mask, variable) => {
    const isSingle = mask !== 0 && (mask & (mask - 1)) === 0;
    return isSingle ? compiled.diagram.restrict(node, variable, 31 - Math.clz32(mask)) : node;
  }, root);
}
