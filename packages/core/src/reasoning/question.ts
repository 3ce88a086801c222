import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { CANNOT_BE, isContradicted } from "./contradiction.ts";
import { PRICE } from "./fact.ts";
import { openFacts, severitiesFrom, stillOpen } from "./open.ts";
import { cheapestFrom, type PriceOf } from "./price-of-asking.ts";
import { bitsOf, type Narrowed, sharesOf } from "./survey.ts";

/**
 * With so few open facts the cheapest way of asking is found exactly; with more, the fact that tells most for its price
 * is asked, which was measured to cost at most a few per cent more (docs/topics.md).
 */
const EXACT_UP_TO = 6;

/** A fact worth asking for. */
export interface Question {
  readonly fact: string;
  /** What each answer that can be would leave possible, as bit sets of severities, by the fact's values. */
  readonly leaves: readonly { readonly value: string; readonly possible: number }[];
}

export function priceByEffort({ subject }: Compiled): PriceOf {
  return (fact) => PRICE[subject.facts[fact]?.effort ?? "measured"];
}

/**
 * The question expected to settle the severity at the least price, as far as it can be settled; undefined where no
 * question can tell anything, or where what was said contradicts itself: then that is settled first.
 */
export function nextQuestion(
  compiled: Compiled,
  knowledge: Knowledge,
  price: PriceOf = priceByEffort(compiled),
): Question | undefined {
  const { masks } = knowledge;
  const telling = openFacts(compiled, knowledge);
  if (telling.length === 0 || isContradicted(compiled, masks)) return undefined;
  const open = stillOpen(compiled, knowledge);
  const variable =
    telling.length <= EXACT_UP_TO
      ? cheapestFrom(open, compiled.variables, knowledge, price).variable
      : mostTelling(open, compiled.variables, masks, telling, price);
  const { name, cells } = compiled.variables[variable] as Compiled["variables"][number];
  const leaves = bitsOf(masks[variable] as number).flatMap((value) => {
    const possible = severitiesFrom(open, open.diagram.restrict(open.root, variable, value), masks);
    return possible === 0 ? [] : [{ value: cells.values[value] as string, possible }];
  });
  return { fact: name, leaves };
}

/** The fact whose answer is expected to take most of the doubt away for its price. */
function mostTelling(
  { diagram, root }: Narrowed,
  variables: Compiled["variables"],
  masks: readonly number[],
  telling: readonly number[],
  price: PriceOf,
): number {
  const doubtOf = (node: number) => doubtIn(sharesOf({ diagram }, node, masks));
  const { doubt } = doubtOf(root);
  let best = telling[0] as number;
  let most = -1;
  for (const variable of telling) {
    const after = bitsOf(masks[variable] as number).map((value) => doubtOf(diagram.restrict(root, variable, value)));
    const weight = after.reduce((sum, one) => sum + one.weight, 0);
    const left = after.reduce((sum, one) => sum + one.weight * one.doubt, 0) / weight;
    const told = (doubt - left + 1e-6) / price((variables[variable] as Compiled["variables"][number]).name);
    if (told > most + 1e-12) {
      most = told;
      best = variable;
    }
  }
  return best;
}

/** Bits of doubt among the completions that can be, and the share of all completions that these are. */
function doubtIn(shares: readonly number[]): { readonly doubt: number; readonly weight: number } {
  const weight = 1 - (shares[CANNOT_BE] ?? 0);
  const doubt = shares.reduce(
    (sum, share, leaf) => (share > 0 && leaf !== CANNOT_BE ? sum - (share / weight) * Math.log2(share / weight) : sum),
    0,
  );
  return { doubt, weight };
}
