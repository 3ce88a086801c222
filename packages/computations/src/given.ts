import {
  type Evidence,
  type Fact,
  fact,
  factNotKnown,
  type Issue,
  measured,
  notKnown,
  type Path,
  parseAccuracy,
  parseWritten,
  rangeOf,
  seen,
  seenBetween,
  seenWithin,
  type Term,
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
 * Makes the evidence a computation needs from text: quantities with their unit ("0.35 Ω"), with their doubt
 * ("0.71 ± 0.02 Ω", "0.71 Ω ±(2 % + 2 digits)") or as a range ("10 m to 14 m"), words, "yes"/"no". A need that is not
 * given is not known. Names no need has are issues. What is read off an instrument and given without its doubt is a
 * reading whose accuracy was not stated.
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
      return first === undefined ? notKnown(need.term, path) : quantityFrom(need, first, path, issues);
    case "quantity-list":
      return entries.map((entry, i) => quantityFrom(need, entry, [...path, i], issues));
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
  need: { readonly term: Term<U> },
  text: string,
  path: Path,
  issues: Issue[],
): Evidence<U> {
  const { term } = need;
  const asked = (end: string) => notNegative(parseWritten(end, term.unit), term.unit, text);
  const refused = (fault: Fault): Evidence<U> => {
    issues.push(issueOf(fault, term, path));
    return notKnown(term, path);
  };
  if (text.includes("±")) {
    const made = withDoubt(text, asked);
    if ("code" in made) return refused(made);
    const { value, doubt } = made;
    return "digits" in doubt ? measured(term, value, path, doubt) : seenWithin(term, value, doubt.value, text, path);
  }
  const [low, high] = text.split(" to ").map(asked);
  if (low === undefined || "code" in low) return refused(low ?? { code: "not-a-quantity", found: text });
  if (high === undefined) return rangeOf(term) === undefined ? seen(term, low, path) : measured(term, low, path);
  if ("code" in high) return refused(high);
  const [from, to] = low.value <= high.value ? [low, high] : [high, low];
  return seenBetween(term, from.value, to.value, text, path);
}

interface Fault {
  readonly code: string;
  readonly found: string;
}

function issueOf({ code, found }: Fault, { name, unit }: Term<Unit>, path: Path): Issue {
  const symbol = UNIT_SYMBOL[unit];
  const form = DOUBT_FAULT.has(code)
    ? `one value, ± and what it may be out by, such as "0.71 ± 0.02 ${symbol}", "0.71 ${symbol} ± 3 %" or "0.71 ${symbol} ±(2 % + 2 digits)"`
    : 'write a number and its unit, such as "0.35 Ω", "32 A" or "30 ms"';
  return {
    code,
    path,
    found,
    expected: `${name}, in ${symbol || "plain number"}${code === "negative" ? ", zero or more" : ""}`,
    advice: form,
  };
}

const DOUBT_FAULT: ReadonlySet<string> = new Set(["not-a-doubt"]);

/** "0.71 ± 0.02 Ω", "0.71 Ω ± 0.02 Ω", "0.71 Ω ± 3 %" or "0.71 Ω ±(2 % + 2 digits)"; a display at its end has no such doubt. */
function withDoubt<U extends Unit>(text: string, asked: (end: string) => Written<U> | Fault) {
  const [before = "", after = "", ...more] = text.split("±").map((part) => part.trim());
  const fault: Fault = { code: "not-a-doubt", found: text.slice(0, 80) };
  if (more.length > 0) return fault;
  const accuracy = parseAccuracy(after);
  const doubt = accuracy ?? asked(after);
  const own = asked(before);
  // "0.71 ± 0.02 Ω": the unit stands once, behind both.
  const value = "code" in own ? asked(`${before} ${after.replace(/^[\d.\s]+/, "")}`) : own;
  if ("code" in value) return value.code === "negative" ? value : fault;
  if ("code" in doubt || value.bound !== "exact") return fault;
  if (!("digits" in doubt) && doubt.bound !== "exact") return fault;
  return { value, doubt };
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
