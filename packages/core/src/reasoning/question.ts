import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { LEAVES } from "./diagram.ts";
import { PRICE } from "./fact.ts";
import { bitsOf, possibleLeaves, settledIn, sharesOf } from "./survey.ts";

/**
 * With so few open facts the cheapest way of asking is found exactly; with more, the fact that tells most for its price
 * is asked, which was measured to cost at most a few per cent more (docs/reasoning-laws.md).
 */
const EXACT_UP_TO = 6;

/** A fact worth asking for. */
export interface Question {
  readonly fact: string;
  /** What each answer would leave possible, as bit sets of severities, by the fact's values. */
  readonly leaves: readonly { readonly value: string; readonly possible: number }[];
}

/** What a question costs; the default goes by effort. */
export type PriceOf = (fact: string) => number;

export function priceByEffort({ subject }: Compiled): PriceOf {
  return (fact) => PRICE[subject.facts[fact]?.effort ?? "measured"];
}

/** Facts that can still change the severity and that can be asked for, by number; none when all is settled. */
export function openFacts(compiled: Compiled, { masks, beyond }: Knowledge): readonly number[] {
  return compiled.diagram
    .support(settledIn(compiled, compiled.root, masks))
    .filter((variable) => !beyond.has(variable));
}

/** The question expected to settle the severity at the least price; undefined where no question can. */
export function nextQuestion(
  compiled: Compiled,
  knowledge: Knowledge,
  price: PriceOf = priceByEffort(compiled),
): Question | undefined {
  const root = settledIn(compiled, compiled.root, knowledge.masks);
  const open = openFacts(compiled, knowledge);
  if (bitsOf(possibleLeaves(compiled, root, knowledge.masks)).length < 2 || open.length === 0) return undefined;
  const variable =
    open.length <= EXACT_UP_TO
      ? cheapest(compiled, root, knowledge, price).variable
      : mostTelling(compiled, root, knowledge, open, price);
  const { name, cells } = compiled.variables[variable] as Compiled["variables"][number];
  const leaves = bitsOf(knowledge.masks[variable] as number).map((value) => ({
    value: cells.values[value] as string,
    possible: possibleLeaves(compiled, compiled.diagram.restrict(root, variable, value), knowledge.masks),
  }));
  return { fact: name, leaves };
}

/** The least expected price of settling the severity as far as it can be settled, and the question to start with. */
export function cheapest(
  compiled: Compiled,
  root: number,
  { masks, beyond }: Knowledge,
  price: PriceOf,
): { readonly price: number; readonly variable: number } {
  const { diagram, variables } = compiled;
  const done = new Map<number, { readonly price: number; readonly variable: number }>();
  const go = (node: number): { readonly price: number; readonly variable: number } => {
    if (node < LEAVES) return SETTLED;
    const known = done.get(node);
    if (known !== undefined) return known;
    let best = SETTLED;
    if (bitsOf(possibleLeaves(compiled, node, masks)).length > 1)
      for (const variable of diagram.support(node)) {
        if (beyond.has(variable)) continue;
        const values = bitsOf(masks[variable] as number);
        const after = values.reduce((sum, value) => sum + go(diagram.restrict(node, variable, value)).price, 0);
        const total = price((variables[variable] as Compiled["variables"][number]).name) + after / values.length;
        if (best === SETTLED || total < best.price - 1e-12) best = { price: total, variable };
      }
    done.set(node, best);
    return best;
  };
  return go(root);
}

const SETTLED: { readonly price: number; readonly variable: number } = Object.freeze({ price: 0, variable: -1 });

/** The fact whose answer is expected to take most of the doubt away for its price. */
function mostTelling(
  compiled: Compiled,
  root: number,
  { masks }: Knowledge,
  open: readonly number[],
  price: PriceOf,
): number {
  const { diagram, variables } = compiled;
  const doubt = entropyOf(sharesOf(compiled, root, masks));
  let best = open[0] as number;
  let most = -1;
  for (const variable of open) {
    const values = bitsOf(masks[variable] as number);
    const after =
      values.reduce(
        (sum, value) => sum + entropyOf(sharesOf(compiled, diagram.restrict(root, variable, value), masks)),
        0,
      ) / values.length;
    const told = (doubt - after + 1e-6) / price((variables[variable] as Compiled["variables"][number]).name);
    if (told > most + 1e-12) {
      most = told;
      best = variable;
    }
  }
  return best;
}

function entropyOf(shares: readonly number[]): number {
  return shares.reduce((sum, share) => (share > 0 ? sum - share * Math.log2(share) : sum), 0);
}
