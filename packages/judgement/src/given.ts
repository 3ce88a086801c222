import {
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  type Issue,
  notKnown,
  type Path,
  parseWritten,
  seen,
  seenBetween,
  UNIT_SYMBOL,
  type Unit,
  type Written,
  type WrittenFault,
} from "@good-grounds/core";
import type { Given, Need, Needs } from "./need.ts";

type Answer = Evidence<Unit> | readonly Evidence<Unit>[] | Fact<string | boolean> | readonly Fact<string>[];

/** Evidence made from figures given by hand, or everything that is wrong with them. */
export type FromText<N extends Needs> =
  | { readonly ok: true; readonly given: Given<N> }
  | { readonly ok: false; readonly issues: readonly Issue[] };

/**
 * Makes the evidence a computation needs from text: quantities with their unit ("0.35 Ω") or as a range
 * ("10 m to 14 m"), words, "yes"/"no". A need that is not given is not known. Names no need has are issues.
 */
export function givenFromText<N extends Needs>(
  needs: N,
  text: Readonly<Record<string, string | readonly string[]>>,
): FromText<N> {
  const issues: Issue[] = [];
  for (const name of Object.keys(text)) {
    if (Object.hasOwn(needs, name)) continue;
    issues.push({
      code: "unknown-need",
      path: [name],
      found: name,
      expected: `one of ${Object.keys(needs).join(", ")}`,
      advice: "check the name",
    });
  }
  const given: Record<string, Answer> = {};
  for (const [name, need] of Object.entries(needs)) {
    const entry = Object.hasOwn(text, name) ? text[name] : undefined;
    const entries = entry === undefined ? [] : typeof entry === "string" ? [entry] : entry;
    given[name] = answer(need, name, entries, issues);
  }
  return issues.length > 0 ? { ok: false, issues } : { ok: true, given: given as Given<N> };
}

function answer(need: Need, name: string, entries: readonly string[], issues: Issue[]): Answer {
  const path: Path = [name];
  const first = entries[0];
  if ((need.kind === "quantity" || need.kind === "word" || need.kind === "yes-no") && entries.length > 1) {
    issues.push({
      code: "given-twice",
      path,
      found: entries.join(", ").slice(0, 80),
      expected: "one value",
      advice: "give it once",
    });
  }
  switch (need.kind) {
    case "quantity":
      return first === undefined ? notKnown(need.term, path) : quantityFrom(need.term, first, path, issues);
    case "quantity-list":
      return entries.map((entry, i) => quantityFrom(need.term, entry, [...path, i], issues));
    case "word":
      return first === undefined ? factNotKnown(need.matter, path) : wordFrom(need, first, path, issues);
    case "word-list":
    case "rcd-tests":
      return entries.map((entry, i) => wordFrom(need, entry, [...path, i], issues)) as readonly Fact<string>[];
    case "yes-no":
      if (first === undefined) return factNotKnown(need.matter, path);
      return wordFrom({ ...need, words: ["yes", "no"] }, first, path, issues, (word) => word === "yes");
  }
}

function quantityFrom<U extends Unit>(
  term: { readonly id: string; readonly name: string; readonly symbol: string; readonly unit: U },
  text: string,
  path: Path,
  issues: Issue[],
): Evidence<U> {
  const ends = text.split(" to ");
  const parts = ends.map((end) => notNegative(parseWritten(end, term.unit), term.unit, text));
  const [low, high] = parts;
  for (const part of parts) {
    if (!("code" in part)) continue;
    issues.push({
      code: part.code,
      path,
      found: part.found,
      expected: `${term.name}, in ${UNIT_SYMBOL[term.unit] || "plain number"}${part.code === "negative" ? ", zero or more" : ""}`,
      advice: 'write a number and its unit, such as "0.35 Ω", "32 A" or "30 ms"',
    });
    return notKnown(term, path);
  }
  if (low === undefined || "code" in low) return notKnown(term, path);
  if (high === undefined || "code" in high) return seen(term, low, path);
  const [from, to] = low.value <= high.value ? [low, high] : [high, low];
  return seenBetween(term, from.value, to.value, text, path);
}

/** A magnitude has no sign; only a temperature may lie below zero. */
function notNegative<U extends Unit>(part: Written<U> | WrittenFault, unit: U, found: string) {
  if ("code" in part || part.value >= 0 || unit === "celsius") return part;
  return { code: "negative", found } as const;
}

function wordFrom(
  need: { readonly matter: Parameters<typeof factNotKnown>[0]; readonly words: readonly string[] },
  text: string,
  path: Path,
  issues: Issue[],
  meaning: (word: string) => string | boolean = (word) => word,
): Fact<string | boolean> {
  if (need.words.includes(text)) return fact(need.matter, meaning(text), path, text);
  issues.push({
    code: "not-in-list",
    path,
    found: text.slice(0, 80),
    expected: `one of ${need.words.join(", ")}`,
    advice: "choose one of these",
  });
  return factNotKnown(need.matter, path);
}
