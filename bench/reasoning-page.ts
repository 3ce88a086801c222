declare const document: { readonly body: { textContent: string } };

/** Runs in a browser: how long the largest topics take to be reasoned about. Prints its figures into the page. */
import {
  type Compiled,
  compile,
  decidingFacts,
  type Knowledge,
  nextQuestion,
  possibleLeaves,
  reason,
} from "@good-grounds/core";
import { TOPICS } from "@good-grounds/topics";

/** The topics with the most facts and the largest diagrams. */
const MOST = 5;
const ROUNDS = 400;
const AGAIN = 10;

const compiled = TOPICS.map((topic) => compile(topic))
  .map((one) => ({ one, size: one.variables.length * 1000 + nodesOf(one) }))
  .sort((a, b) => b.size - a.size)
  .slice(0, MOST)
  .map(({ one }) => one);

function nodesOf({ diagram, root }: Compiled): number {
  const seen = new Set<number>();
  const go = (node: number) => {
    if (node < 8 || seen.has(node)) return;
    seen.add(node);
    for (const child of diagram.childrenOf(node)) go(child);
  };
  go(root);
  return seen.size;
}

/** A small generator with a fixed start: every run asks about the same situations. */
let state = 7671;
const random = (below: number) => {
  state = (Math.imul(state, 1103515245) + 12345) >>> 0;
  return Math.floor((state / 2 ** 32) * below);
};

/** Half of the facts known, the others not. */
function knowledgeOf({ variables }: Compiled): Knowledge {
  const masks = variables.map(({ kind, cells }) => {
    const count = cells.values.length;
    if (kind === "point") return 1;
    return random(2) === 0 ? 2 ** count - 1 : 1 << random(count);
  });
  return { masks, beyond: new Set(), grounds: new Map() };
}

const figures = compiled.map((one) => {
  // A browser's clock is coarse, so the same situation is reasoned about several times.
  const times = Array.from({ length: ROUNDS }, () => {
    const knowledge = knowledgeOf(one);
    const start = performance.now();
    for (let again = 0; again < AGAIN; again++) {
      possibleLeaves(one, one.root, knowledge.masks);
      nextQuestion(one, knowledge);
      decidingFacts(one, knowledge);
    }
    return (performance.now() - start) / AGAIN;
  });
  const nothing = {
    masks: one.variables.map(({ kind, cells }) => (kind === "point" ? 1 : 2 ** cells.values.length - 1)),
    beyond: new Set<number>(),
    grounds: new Map(),
  };
  const first = performance.now();
  reason(one, nothing);
  const blank = performance.now() - first;
  times.sort((a, b) => a - b);
  return {
    topic: one.subject.id,
    variables: one.variables.length,
    nodes: nodesOf(one),
    median: times[ROUNDS / 2] ?? 0,
    worst: times[ROUNDS - 1] ?? 0,
    blank,
  };
});

document.body.textContent = JSON.stringify(figures);
