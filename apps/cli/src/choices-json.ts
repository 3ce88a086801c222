import type { ChoiceComparison, CohenKappa, FactShown, FleissKappa, Issue } from "@good-grounds/core";

/** A file that was named but could not be used: what is wrong in it, or why it could not be read. */
export interface Unused {
  readonly name: string;
  readonly issues: readonly Issue[];
  readonly problem: string | null;
}

/** Name and version of the output; the version changes when a member changes its meaning or goes. */
const OUTPUT = Object.freeze({ format: "good-grounds-choices", version: 1 });

/** A comparison of choices as plain data. */
export function choicesJson(
  { count, sets, differences, near, agreement }: ChoiceComparison,
  unused: readonly Unused[],
): object {
  return {
    ...OUTPUT,
    count,
    unused,
    sets: sets.map(({ topic, facts, positions, choices }) => ({
      topic,
      facts: facts.map(({ name, value }) => ({ name, ...valueJson(value) })),
      positions,
      choices,
    })),
    differences,
    near: near.map(({ differs, members }) => ({
      differs,
      members: members.map(({ set, value }) => ({
        set,
        ...(value === null ? { says: "not-recorded", value: null } : valueJson(value)),
      })),
    })),
    agreement: {
      by: agreement.by,
      pairs: { all: agreement.all, within: agreement.within, between: agreement.between },
      fleiss: { judges: agreement.several.judges, ...kappaJson(agreement.several.kappa) },
      varied: agreement.varied,
      tied: agreement.tied,
      cohen: agreement.two.map(({ judges, common, kappa, linear, quadratic }) => ({
        judges,
        common,
        unweighted: kappaJson(kappa),
        linear: kappaJson(linear),
        quadratic: kappaJson(quadratic),
      })),
      notPaired: agreement.notPaired,
    },
  };
}

function valueJson(value: FactShown["value"]): object {
  if (typeof value !== "object") return { says: "value", value };
  return { says: "notKnown" in value ? "not-known" : "not-applicable", value: null };
}

/** A coefficient, with null for the value and the reason where it has none. */
function kappaJson(kappa: CohenKappa | FleissKappa): object {
  if (kappa.defined) {
    const { defined, value, ...more } = kappa;
    return { value, because: null, ...more };
  }
  const { defined, ...more } = kappa;
  return { value: null, ...more };
}
