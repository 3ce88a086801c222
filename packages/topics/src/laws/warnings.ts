import { type Compiled, ruleIn, statementsIn } from "@good-grounds/core";
import { compiledTopic } from "../compiled.ts";
import type { Document } from "../document/document.ts";
import { namesIn } from "../resolve/shared.ts";
import type { Topic } from "../topic.ts";

/** Something in a text that is no fault and does nothing. */
export interface Warning {
  readonly kind: "values-alike" | "fact-idle" | "positions-alike" | "remedy-idle" | "shared-unused";
  /** The topic, or the shared text. */
  readonly in: string;
  readonly words: string;
}

/** What of a topic does nothing: facts and values that no rule tells apart, positions that change nothing, remedies that lower no class. */
export function warningsOf(topic: Topic): readonly Warning[] {
  const compiled = compiledTopic(topic);
  const { diagram } = compiled;
  const nodes = functionsOf(topic, compiled);
  const warn = (kind: Warning["kind"], words: string): Warning => ({ kind, in: topic.id, words });
  const alike = (variable: number, a: number, b: number) =>
    nodes.every((node) => diagram.restrict(node, variable, a) === diagram.restrict(node, variable, b));
  const isIdle = (variable: number) => nodes.every((node) => !diagram.support(node).includes(variable));
  const ofVariables = compiled.variables.flatMap(({ kind, name, cells }, variable): Warning[] => {
    const pairs = pairsOf(cells.values.length, cells.ordered).filter(([a, b]) => alike(variable, a, b));
    const names = pairs.map(([a, b]) => `${cells.values[a]} and ${cells.values[b]}`);
    const all = pairsOf(cells.values.length, true).length;
    if (pairs.length >= all && pairs.length > 0 && isIdle(variable))
      return [warn(kind === "fact" ? "fact-idle" : "positions-alike", `"${name}" changes nothing`)];
    return names.map((pair) =>
      kind === "fact"
        ? warn("values-alike", `no rule tells ${pair} of "${name}" apart`)
        : warn("positions-alike", `${pair} on "${name}" come to the same`),
    );
  });
  return [
    ...ofVariables,
    ...idleRemedies(topic, compiled).map((words) => warn("remedy-idle", `"${words}" lowers no class`)),
  ];
}

/** Everything that answers can change: the class, what cannot be, and which sentence is said. */
function functionsOf(topic: Topic, compiled: Compiled): readonly number[] {
  const said = Object.values(topic.client).flatMap((statements) => statementsIn(statements).map(({ when }) => when));
  return [compiled.root, compiled.contradicted, ...said.map((when) => ruleIn(when, compiled))];
}

/** Neighbours where values have an order, else every two. */
function pairsOf(count: number, ordered: boolean): readonly (readonly [number, number])[] {
  return Array.from({ length: count }, (_, a) =>
    Array.from({ length: count - a - 1 }, (_, i) => [a, a + i + 1] as const).filter(([, b]) => !ordered || b === a + 1),
  ).flat();
}

function idleRemedies({ remedies }: Topic, { diagram, root, index, variables }: Compiled): readonly string[] {
  return remedies
    .filter(({ changes }) => {
      const after = Object.entries(changes).reduce((node, [name, value]) => {
        const variable = index.get(`fact ${name}`) ?? -1;
        const at = variables[variable]?.cells.values.indexOf(value) ?? -1;
        return at < 0 ? node : diagram.restrict(node, variable, at);
      }, root);
      const lowers = diagram.apply((a, b) => (a > b ? 1 : 0), root, after);
      return lowers === 0;
    })
    .map(({ words }) => words);
}

/** Names of shared texts that no topic and no state uses. */
export function unusedShared(documents: readonly Document[]): readonly Warning[] {
  const used = new Set(
    documents.flatMap(({ uses, statements }) => [
      ...uses.map(({ text }) => text),
      ...statements.flatMap((one) =>
        one.kind === "state" ? one.values.flatMap(({ when }) => (when === undefined ? [] : namesIn(when))) : [],
      ),
    ]),
  );
  return documents
    .filter(({ kind }) => kind === "shared")
    .flatMap(({ id, statements }) =>
      statements.flatMap((one) =>
        "name" in one && typeof one.name === "object" && one.kind !== "danger" && !used.has(one.name.text)
          ? [{ kind: "shared-unused" as const, in: id.text, words: `nothing uses "${one.name.text}"` }]
          : [],
      ),
    );
}
