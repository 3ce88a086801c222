import type { Condition } from "../document/condition.ts";

/** A condition as it is written behind a head, with the lines below it where it does not fit on one. */
export function conditionLines(condition: Condition): { readonly head: string; readonly below: readonly string[] } {
  const inline = onOneLine(condition);
  if (inline !== undefined) return { head: inline, below: [] };
  if (!("of" in condition)) return { head: onOneLine(condition) ?? "", below: [] };
  const below = condition.of.flatMap((one) => {
    const { head, below: deeper } = conditionLines(one);
    return [head, ...deeper.map((line) => `  ${line}`)];
  });
  return { head: BLOCK[condition.kind], below };
}

const BLOCK = { all: "all of", any: "any of", none: "none of", "not-all": "not all of" } as const;
const LONGEST = 100;

/** On one line where it can be read in one way only. */
function onOneLine(condition: Condition): string | undefined {
  switch (condition.kind) {
    case "always":
      return "always";
    case "so":
      return condition.not ? `not ${condition.name.text}` : condition.name.text;
    case "is": {
      const values = condition.values.map(({ text }) => text).join(" or ");
      const reach = condition.reach === undefined ? "" : ` or ${condition.reach}`;
      return `${condition.name.text} is ${condition.not ? "not " : ""}${values}${reach}`;
    }
    case "compare":
      return `${condition.name.text} ${condition.how} ${condition.quantity.text}`;
    case "none":
    case "not-all":
      return undefined;
    default: {
      const terms = condition.of.map((one) => ("of" in one ? undefined : onOneLine(one)));
      if (terms.length < 2 || terms.includes(undefined)) return undefined;
      if (condition.kind === "any" && (condition.of.some(hasChoice) || readsAsValue(condition.of))) return undefined;
      const line = terms.join(condition.kind === "all" ? " and " : " or ");
      return line.length > LONGEST ? undefined : line;
    }
  }
}

/** Whether it has an "or" of its own, so that another one beside it would be read twice. */
function hasChoice(one: Condition): boolean {
  return one.kind === "is" && (one.values.length > 1 || one.reach !== undefined);
}

/** Whether a fact behind "or" would be read as one more value of the condition before it. */
function readsAsValue(of: readonly Condition[]): boolean {
  return of.some((one, i) => one.kind === "so" && !one.not && of[i - 1]?.kind === "is");
}
