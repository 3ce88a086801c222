import type { Expression, FactOf } from "@good-grounds/core";
import type { Condition } from "../document/condition.ts";
import type { Document } from "../document/document.ts";
import type { Scope } from "./scope.ts";

/** What the parts of a topic are made from. */
export interface Draft {
  readonly document: Document;
  readonly scope: Scope;
  /** Facts that the subject itself says, with the values it leaves. */
  readonly given: ReadonlyMap<string, readonly string[]>;
  readonly facts: Readonly<Record<string, FactOf>>;
  readonly rule: (condition: Condition, within: readonly string[]) => Expression;
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
