import type { Knowledge } from "./answers.ts";
import { type Compiled, valuesOf } from "./compile.ts";
import type { Expression } from "./expression.ts";

export type Truth = "true" | "false" | "open";

export interface Explained {
  readonly truth: Truth;
  /** Facts and points that make it so; where it is open, those that could settle it. */
  readonly because: readonly string[];
}

/** Whether a rule holds for what is known, and the fewest of its leaves that show it. */
export function explain(rule: Expression, compiled: Compiled, knowledge: Knowledge): Explained {
  switch (rule.op) {
    case "always":
      return { truth: "true", because: [] };
    case "never":
      return { truth: "false", because: [] };
    case "not": {
      const { truth, because } = explain(rule.of, compiled, knowledge);
      return { truth: truth === "open" ? "open" : truth === "true" ? "false" : "true", because };
    }
    case "all":
      return combined(
        rule.of.map((one) => explain(one, compiled, knowledge)),
        "false",
        "true",
      );
    case "any":
      return combined(
        rule.of.map((one) => explain(one, compiled, knowledge)),
        "true",
        "false",
      );
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
