import type { Word } from "../document/condition.ts";
import type { Document, Statement } from "../document/document.ts";
import { checkNames } from "./fact.ts";
import type { Scope } from "./scope.ts";

/** Tells statements of a topic that stand there twice, or go by one name. */
export function checkTwice(document: Document, scope: Scope): void {
  for (const one of document.statements) {
    if (one.kind === "contested") checkNames(one.positions, one.name, scope, [`contested ${one.name.text}`], true);
    if (one.kind === "state") checkNames(one.values, one.name, scope, [`state ${one.name.text}`]);
    if (one.kind === "route") {
      const seen = new Set<string>();
      for (const { name } of one.layers) tell(name, `layer ${name.text}`, seen, scope, [`route ${one.name.text}`]);
    }
  }
  const seen = new Set<string>();
  for (const one of document.statements) {
    const { kind } = one;
    if (kind === "route" || kind === "danger") tell(one.name, `${kind} ${one.name.text}`, seen, scope);
    else if (kind === "example") tell(wordAt(one, one.name), `example ${one.name}`, seen, scope);
    else if (kind === "said" || kind === "remedy" || kind === "departure")
      tell(wordAt(one, kind), `${kind} ${sameAs(one)}`, seen, scope);
  }
  checkAmong(document.uses, "uses", scope);
  checkAmong(document.items, "answers", scope);
}

function checkAmong(words: readonly Word[], under: string, scope: Scope): void {
  const seen = new Set<string>();
  for (const word of words) tell(word, `${word.text} under "${under}"`, seen, scope);
}

/** What makes two statements without a name the same. */
function sameAs(one: Statement): string {
  if (one.kind === "said") return JSON.stringify([one.under, one.words]);
  if (one.kind === "remedy") return one.words;
  return one.kind === "departure" ? one.clause : "";
}

function wordAt({ at }: Statement, text: string): Word {
  return { text, at };
}

function tell(word: Word, what: string, seen: Set<string>, scope: Scope, within: readonly string[] = []): void {
  if (seen.has(what))
    scope.fault(
      word,
      /^(?:said|remedy|departure) /.test(what) ? `the same ${word.text} a second time` : `${what} a second time`,
      "each once",
      "take one of the two away, or name it otherwise",
      within,
    );
  seen.add(what);
}
