import type { Unit } from "../quantity/unit.ts";
import type { Basis, Ground, NotKnown, Published, Source, UnknownFact } from "./evidence.ts";

/** Every node under `root` and itself, each once, parents before children. Shared nodes are visited once. */
export function* nodesOf(root: Ground): Generator<Ground> {
  const visited = new Set<Ground>();
  const waiting: Ground[] = [root];
  for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
    if (visited.has(node)) continue;
    visited.add(node);
    yield node;
    if ("from" in node) for (let i = node.from.length - 1; i >= 0; i--) waiting.push(node.from[i] as Ground);
  }
}

/** What is missing under a conclusion: the unknown leaves, in the order they are met. */
export function missingOf(root: Ground): readonly (NotKnown<Unit> | UnknownFact)[] {
  return [...nodesOf(root)].filter((node) => node.kind === "not-known" || node.kind === "fact-not-known");
}

/** The published sources a conclusion rests on, each once. */
export function sourcesOf(root: Ground): readonly Source[] {
  const found = new Set<Source>();
  for (const node of nodesOf(root)) {
    if (node.kind === "published") found.add((node as Published<Unit>).detail.source);
    if ((node.kind === "assumed" || node.kind === "expected") && node.detail.source !== undefined)
      found.add(node.detail.source);
  }
  return [...found];
}

const WEAKNESS: readonly Basis[] = ["published", "derived", "common-practice", "memory"];

/** The weakest basis among the published figures a conclusion rests on; undefined where it rests on none. */
export function weakestBasis(root: Ground): Basis | undefined {
  let weakest = -1;
  for (const source of sourcesOf(root)) weakest = Math.max(weakest, WEAKNESS.indexOf(source.basis));
  return WEAKNESS[weakest];
}
