import type { Given } from "../document/document.ts";
import type { FormerFact } from "../topic.ts";
import type { Asked } from "./asked.ts";
import { type Draft, statements } from "./draft.ts";
import { checkValue } from "./fact.ts";

/** How answers of earlier files to facts that have other names now are read. */
export function formerlyOf(
  draft: Draft,
  asked: Asked,
): { readonly formerly?: Readonly<Record<string, readonly FormerFact[]>> } {
  const formerly: Record<string, readonly FormerFact[]> = {};
  const areSettled = statements(draft, "given").every((given) => isSound(given, draft));
  for (const { name, fact, values } of statements(draft, "formerly")) {
    const within = [`formerly ${name.text}`];
    // What a state brings and the subject settles is not asked any more, though its name is known here.
    if (
      draft.scope.get(name.text) !== undefined &&
      asked(name.text) &&
      (areSettled || !draft.scope.isShared(name.text))
    )
      draft.scope.fault(name, `"${name.text}" is asked today`, "a name that is no longer used", "take it away", within);
    const before = Object.hasOwn(formerly, name.text) ? (formerly[name.text] ?? []) : [];
    formerly[name.text] = before;
    if (fact === undefined) continue;
    const found = draft.scope.find(fact, within);
    const says = values.map(({ former, now }) => {
      if (found?.kind === "fact") for (const value of now) checkValue(value, found, draft.scope, within);
      return [former.text, now.map(({ text }) => text).join(" | ")] as const;
    });
    formerly[name.text] = [...before, { fact: fact.text, says: Object.fromEntries(says) }];
  }
  return Object.keys(formerly).length === 0 ? {} : { formerly };
}

/** Whether what the subject says of a fact can be so; else it settles nothing, and more is asked than is meant. */
function isSound({ fact, values }: Given, { scope }: Draft): boolean {
  const found = scope.get(fact.text);
  return found?.kind === "fact" && values.every(({ text }) => found.values.some(({ name }) => name.text === text));
}
