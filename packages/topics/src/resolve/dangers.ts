import { ALWAYS, all, any, type Danger, type Expression } from "@good-grounds/core";
import type { Route } from "../document/document.ts";
import { type Rules, statements } from "./draft.ts";
import { restsOn } from "./rests-on.ts";
import type { Scope } from "./scope.ts";
import { namesIn } from "./shared.ts";

/** The dangers of a topic: its own, and the shared ones that speak of what it asks. */
export function dangersOf(draft: Rules): { readonly dangers?: readonly Danger[] } {
  const shared = draft.scope.everywhere().filter((one) => one.kind === "danger");
  const own = statements(draft, "danger").map((one) => ({ ...one, there: ALWAYS }));
  const dangers = [...own, ...shared.map((one) => ({ ...one, there: whereMet(namesIn(one.when), draft) }))].map(
    ({ name, least, clause, regulations, when, there }): Danger => {
      const rule = draft.rule(when, [`danger ${name.text}`]);
      return {
        id: name.text,
        least,
        when: rule.op === "never" || there.op === "always" ? rule : rule.op === "always" ? there : all(rule, there),
        words: clause,
        regulations,
      };
    },
  );
  const possible = dangers.filter(({ when }) => when.op !== "never");
  return possible.length === 0 ? {} : { dangers: possible };
}

/**
 * Where a shared danger is met in this topic. A subject that says what would be touched says it for the routes on which
 * it is touched: the danger is there with one of them, and not where the subject has another form without them.
 */
function whereMet(facts: readonly string[], draft: Rules): Expression {
  const routes = statements(draft, "route").filter((route) => isMetOn(route, facts, draft.scope));
  if (routes.length === 0 || !facts.some((fact) => draft.given.has(fact))) return ALWAYS;
  const there = routes.map(({ when, name }) =>
    when === undefined ? ALWAYS : draft.rule(when, [`route ${name.text}`]),
  );
  if (there.some(({ op }) => op === "always")) return ALWAYS;
  const [only] = there;
  return there.length === 1 && only !== undefined ? only : any(...there);
}

/** Whether a layer of the route is a state that rests on one of the facts. */
function isMetOn({ layers }: Route, facts: readonly string[], scope: Scope): boolean {
  return layers.some(
    ({ holding }) => holding.kind === "as" && restsOn([holding.state.text], scope).some((name) => facts.includes(name)),
  );
}
