import type { Condition } from "../document/condition.ts";
import type {
  Amount,
  ContradictionNode,
  DangerNode,
  Document,
  Fact,
  Point,
  State,
  Statement,
} from "../document/document.ts";
import type { TextFault } from "../text/fault.ts";

/** What topics share: every fact, state and contested point of all shared texts, each under a name of its own. */
export interface Shared {
  readonly facts: ReadonlyMap<string, Fact | Amount>;
  readonly states: ReadonlyMap<string, State>;
  readonly points: ReadonlyMap<string, Point>;
  /** Dangers and contradictions that hold wherever what they speak of is asked. */
  readonly everywhere: readonly (DangerNode | ContradictionNode)[];
}

/** Puts the shared texts together; a name given twice is told at the second place. */
export function sharedOf(documents: readonly Document[]): {
  readonly shared: Shared;
  readonly faults: readonly TextFault[];
} {
  const facts = new Map<string, Fact | Amount>();
  const states = new Map<string, State>();
  const points = new Map<string, Point>();
  const everywhere: (DangerNode | ContradictionNode)[] = [];
  const faults: TextFault[] = [];
  const at = new Map<string, string>();
  for (const document of documents)
    for (const statement of document.statements) {
      if (statement.kind === "danger" || statement.kind === "contradiction") everywhere.push(statement);
      if (!isNamed(statement)) continue;
      const { name } = statement;
      const before = at.get(name.text);
      if (before !== undefined) {
        faults.push({
          file: document.file,
          at: name.at,
          found: `"${name.text}" is the name of something in ${before} as well`,
          expected: "a name of its own for everything that is shared",
          advice: "name one of the two otherwise",
          within: [],
        });
        continue;
      }
      at.set(name.text, document.file);
      if (statement.kind === "fact" || statement.kind === "amount") facts.set(name.text, statement);
      else if (statement.kind === "state") states.set(name.text, statement);
      else points.set(name.text, statement);
    }
  return { shared: { facts, states, points, everywhere }, faults };
}

/** Names that a condition speaks of. */
export function namesIn(condition: Condition): readonly string[] {
  if (condition.kind === "always") return [];
  if ("of" in condition) return condition.of.flatMap(namesIn);
  return [condition.name.text];
}

export type Named = Fact | Amount | Point | State;

/** Whether a statement is something that conditions speak of by its name. */
export function isNamed(statement: Statement): statement is Named {
  const { kind } = statement;
  return kind === "fact" || kind === "amount" || kind === "contested" || kind === "state";
}
