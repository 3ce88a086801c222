import type { Expression, FactOf } from "@good-grounds/core";
import type { Condition } from "../document/condition.ts";
import type { Document } from "../document/document.ts";
import type { Scope } from "./scope.ts";

/** What the rules of a topic are made from. */
export interface Rules {
  readonly document: Document;
  readonly scope: Scope;
  /** Facts that the subject itself says, with the values it leaves. */
  readonly given: ReadonlyMap<string, readonly string[]>;
  readonly rule: (condition: Condition, within: readonly string[]) => Expression;
}

/** What the other parts of a topic are made from. */
export interface Draft extends Rules {
  readonly facts: Readonly<Record<string, FactOf>>;
}

/** The statements of one kind. */
export function statements<K extends Document["statements"][number]["kind"]>(
  { document }: Pick<Draft, "document">,
  kind: K,
) {
  return document.statements.filter(
    (one): one is Extract<Document["statements"][number], { kind: K }> => one.kind === kind,
  );
}
