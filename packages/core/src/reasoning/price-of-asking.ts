import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { CANNOT_BE } from "./contradiction.ts";
import { LEAVES } from "./diagram.ts";
import { severitiesFrom } from "./open.ts";
import { bitsOf, type Narrowed, possibleLeaves, sharesOf } from "./survey.ts";

/** What a question costs; the default goes by effort. */
export type PriceOf = (fact: string) => number;

/** An expected price, and the variable to start with; −1 where nothing that can be asked tells anything. */
export interface Plan {
  readonly price: number;
  readonly variable: number;
}

const NOTHING_TO_ASK: Plan = Object.freeze({ price: 0, variable: -1 });

/** The least expected price of settling the severity as far as it can be settled, and the question to start with. */
export function cheapest(compiled: Compiled, root: number, knowledge: Knowledge, price: PriceOf): Plan {
  return cheapestFrom({ diagram: compiled.diagram, root }, compiled.variables, knowledge, price);
}

/** The same from a function that stands in a diagram of its own. Every completion that can be is as likely as the next. */
export function cheapestFrom(
  open: Narrowed,
  variables: Compiled["variables"],
  { masks, beyond }: Knowledge,
  price: PriceOf,
): Plan {
  const { diagram } = open;
  const done = new Map<number, Plan>();
  const plan = (node: number): Plan => {
    const known = done.get(node);
    if (known !== undefined) return known;
    const now = node < LEAVES ? 0 : severitiesFrom(open, node, masks);
    let best = NOTHING_TO_ASK;
    let tells = false;
    if (bitsOf(now).length > 1)
      for (const variable of diagram.support(node)) {
        if (beyond.has(variable)) continue;
        const after = bitsOf(masks[variable] as number).flatMap((value) => {
          const rest = diagram.restrict(node, variable, value);
          const possible = severitiesFrom(open, rest, masks);
          return possible === 0 ? [] : [{ possible, plan: plan(rest), weight: weightOf(open, rest, masks) }];
        });
        tells ||= after.some(({ possible, plan: { variable: next } }) => possible !== now || next >= 0);
        const weight = after.reduce((sum, one) => sum + one.weight, 0);
        const mean = after.reduce((sum, one) => sum + one.weight * one.plan.price, 0) / weight;
        const total = price((variables[variable] as Compiled["variables"][number]).name) + mean;
        if (best === NOTHING_TO_ASK || total < best.price - 1e-12) best = { price: total, variable };
      }
    const made = tells ? best : NOTHING_TO_ASK;
    done.set(node, made);
    return made;
  };
  return plan(open.root);
}

/** The share of the completions from a node on that can be. */
function weightOf(open: Narrowed, node: number, masks: readonly number[]): number {
  const allCanBe = (possibleLeaves(open, node, masks) & (1 << CANNOT_BE)) === 0;
  return allCanBe ? 1 : 1 - (sharesOf(open, node, masks)[CANNOT_BE] ?? 0);
}
