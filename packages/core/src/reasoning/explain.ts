import type { Knowledge } from "./answers.ts";
import type { Compiled } from "./compile.ts";
import { everyCell, isContradicted, whereItCanBe } from "./contradiction.ts";
import type { Expression } from "./expression.ts";
import { possibleOf } from "./possible.ts";
import { valuesOf } from "./rule-function.ts";
import { ruleOfState } from "./state.ts";
import { narrowedTo } from "./survey.ts";

export type Truth = "true" | "false" | "open";

export interface Explained {
  readonly truth: Truth;
  /** Facts and points that make it so; where it is open, those that could settle it. */
  readonly because: readonly string[];
}

/**
 * Whether a rule holds for what is known, read off its function, which is exact, and few of its leaves that show it.
 * Reading the rule as it is written says which; where that alone does not show it, such as "a or b" of a fact that is one
 * of both, facts that do are found on the function.
 */
export function explain(rule: Expression, holds: number, compiled: Compiled, knowledge: Knowledge): Explained {
  const leaves = possibleOf(compiled, holds, knowledge.masks);
  const truth = leaves === 2 ? "true" : leaves === 1 ? "false" : "open";
  const written = asWritten(rule, compiled, knowledge);
  if (truth === "open") return { truth, because: stillOpenOf(written.because, holds, compiled, knowledge) };
  return written.truth === truth ? written : { truth, because: enoughToShow(holds, compiled, knowledge) };
}

/** Those of the names on which a function still depends. */
export function stillOpenOf(
  names: readonly string[],
  node: number,
  compiled: Compiled,
  { masks }: Knowledge,
): readonly string[] {
  const asTaken = isContradicted(compiled, masks) ? node : whereItCanBe(compiled, node);
  const { diagram, root } = narrowedTo(compiled, asTaken, masks);
  const open = diagram.support(root);
  return names.filter((name) => open.includes(compiled.index.get(name) as number));
}

/** Facts and points which alone give a function the one leaf it has; none of them can be left out. */
export function enoughToShow(node: number, compiled: Compiled, { masks }: Knowledge): readonly string[] {
  const shown = possibleOf(compiled, node, masks);
  let kept = [...masks];
  for (const variable of masks.keys()) {
    const without = kept.with(variable, everyCell(compiled, variable));
    if (possibleOf(compiled, node, without) === shown) kept = without;
  }
  return compiled.variables.flatMap(({ kind, name }, i) =>
    kept[i] === everyCell(compiled, i) ? [] : [`${kind} ${name}`],
  );
}

/** Whether a rule as it is written shows that it holds or not, and the fewest of its leaves that do. */
function asWritten(rule: Expression, compiled: Compiled, knowledge: Knowledge): Explained {
  switch (rule.op) {
    case "always":
      return { truth: "true", because: [] };
    case "never":
      return { truth: "false", because: [] };
    case "not": {
      const { truth, because } = asWritten(rule.of, compiled, knowledge);
      return { truth: truth === "open" ? "open" : truth === "true" ? "false" : "true", because };
    }
    case "all":
      return combined(
        rule.of.map((one) => asWritten(one, compiled, knowledge)),
        "false",
        "true",
      );
    case "any":
      return combined(
        rule.of.map((one) => asWritten(one, compiled, knowledge)),
        "true",
        "false",
      );
    case "state":
      return asWritten(ruleOfState(rule, compiled.subject), compiled, knowledge);
    default: {
      const name = rule.op === "held" ? `point ${rule.point}` : `fact ${rule.fact}`;
      const variable = compiled.index.get(name) as number;
      const mask = knowledge.masks[variable] as number;
      const { cells } = compiled.variables[variable] as Compiled["variables"][number];
      const wanted = valuesOf(rule, cells, compiled.subject).reduce((bits, value) => bits | (1 << value), 0);
      const truth = (mask & wanted) === 0 ? "false" : (mask & ~wanted) === 0 ? "true" : "open";
      return { truth, because: [name] };
    }
  }
}

/** `decides` is the truth of one part that decides the whole; `otherwise` that of the whole when every part has it. */
function combined(parts: readonly Explained[], decides: Truth, otherwise: Truth): Explained {
  const shortest = parts
    .filter(({ truth }) => truth === decides)
    .sort((a, b) => a.because.length - b.because.length)[0];
  if (shortest !== undefined) return shortest;
  const open = parts.filter(({ truth }) => truth === "open");
  const shown = open.length > 0 ? open : parts;
  return {
    truth: open.length > 0 ? "open" : otherwise,
    because: [...new Set(shown.flatMap(({ because }) => because))],
  };
}
