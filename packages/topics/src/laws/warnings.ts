import { ALWAYS, ruleIn } from "@good-grounds/core";
import type { Document } from "../document/document.ts";
import { namesIn } from "../resolve/shared.ts";
import type { Topic } from "../topic.ts";
import { areAlike, everyTwo, type Functions, functionsOf } from "./alike.ts";

/** Something in a text that is no fault and does nothing. */
export interface Warning {
  readonly kind: "fact-idle" | "positions-alike" | "remedy-idle" | "shared-unused";
  /** The topic, or the shared text. */
  readonly in: string;
  readonly words: string;
}

/** What of a topic does nothing: facts and positions that change nothing, remedies that lower no class. */
export function warningsOf(topic: Topic): readonly Warning[] {
  const functions = functionsOf(topic);
  const warn = (kind: Warning["kind"], words: string): Warning => ({ kind, in: topic.id, words });
  const ofVariables = functions.compiled.variables.flatMap(({ kind, name, cells }, variable): Warning[] => {
    if (isIdle(functions, variable))
      return [warn(kind === "fact" ? "fact-idle" : "positions-alike", `"${name}" changes nothing`)];
    if (kind === "fact") return [];
    return everyTwo(cells.values.length)
      .filter(([a, b]) => areAlike(functions, variable, a, b))
      .map(([a, b]) =>
        warn("positions-alike", `${cells.values[a]} and ${cells.values[b]} on "${name}" come to the same`),
      );
  });
  return [
    ...ofVariables,
    ...idleRemedies(topic, functions).map((words) => warn("remedy-idle", `"${words}" lowers no class`)),
  ];
}

function isIdle({ compiled: { diagram }, nodes }: Functions, variable: number): boolean {
  return nodes.every((node) => !diagram.support(node).includes(variable));
}

function idleRemedies({ remedies }: Topic, { compiled }: Functions): readonly string[] {
  const { diagram, root, index, variables } = compiled;
  return remedies
    .filter(({ changes, where = ALWAYS }) => {
      const after = Object.entries(changes).reduce((node, [name, value]) => {
        const variable = index.get(`fact ${name}`) ?? -1;
        const at = variables[variable]?.cells.values.indexOf(value) ?? -1;
        return at < 0 ? node : diagram.restrict(node, variable, at);
      }, root);
      const lowers = diagram.apply(
        Math.min,
        diagram.apply((a, b) => (a > b ? 1 : 0), root, after),
        ruleIn(where, compiled),
      );
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
