import { ALWAYS, type Classification, leavesOf, type Statement } from "@good-grounds/core";
import type { PlainWords, Remedy } from "../topic.ts";
import { type Draft, type Rules, statements } from "./draft.ts";
import { checkValue } from "./fact.ts";

/** Sentences for whoever ordered the report, by classification, in the order of the text. */
export function clientOf(draft: Rules): Readonly<Partial<Record<Classification, readonly Statement[]>>> {
  const client: Partial<Record<Classification, Statement[]>> = {};
  for (const { under, words, when, unsure } of statements(draft, "said")) {
    const within = [`said ${under}`];
    for (const fact of unsure) draft.scope.find(fact, within);
    const statement: Statement = {
      words,
      when: when === undefined ? ALWAYS : draft.rule(when, within),
      ...(unsure.length === 0 ? {} : { unsettled: unsure.map(({ text }) => text) }),
    };
    client[under] = [...(client[under] ?? []), statement];
  }
  return client;
}

export function plainOf({ scope, facts }: Draft): PlainWords {
  const open: Record<string, string> = {};
  const values: Record<string, Record<string, string>> = {};
  for (const named of scope.all()) {
    if (named.kind !== "fact" && named.kind !== "amount") continue;
    const name = named.name.text;
    if (!Object.hasOwn(facts, name)) continue;
    if (named.plain !== undefined) open[name] = named.plain;
    for (const value of named.kind === "fact" ? named.values : [])
      if (value.plain !== undefined) values[name] = { ...values[name], [value.name.text]: value.plain };
  }
  return { facts: open, values };
}

export function remediesOf(draft: Draft): readonly Remedy[] {
  return statements(draft, "remedy").map(({ words, makes, fits }) => {
    const within = ["remedy"];
    for (const { fact, value } of makes) {
      const found = draft.scope.find(fact, within);
      if (found?.kind === "fact") checkValue(value, found, draft.scope, within);
      else if (found?.kind === "state" || found?.kind === "contested")
        draft.scope.fault(
          fact,
          `"${fact.text}" is no fact`,
          "a fact that is different afterwards",
          "a remedy changes facts",
          within,
        );
    }
    // What the subject itself says is not asked; a remedy that changes it leads out of the subject.
    const changes = makes.filter(({ fact }) => Object.hasOwn(draft.facts, fact.text));
    const where = fits === undefined ? ALWAYS : draft.rule(fits, within);
    // Where it rests on something that the subject settles and nobody is asked, the remedy fits everywhere.
    const isAsked = [...leavesOf(where)].every((leaf) => !("fact" in leaf) || Object.hasOwn(draft.facts, leaf.fact));
    return {
      words,
      ...(fits === undefined || !isAsked ? {} : { where }),
      changes: Object.fromEntries(changes.map(({ fact, value }) => [fact.text, value.text])),
    };
  });
}
