import type { Compared, Evidence, Judgement, Relation, Settled, Unit } from "@good-grounds/core";
import { RELATION, WORDS } from "../locales/en.ts";
import { bandWords, valuesApart } from "./figure.ts";
import { spoken } from "./spoken.ts";

/** The comparison that gives a judgement its verdict and margin; undefined where facts decide. */
export function decidingComparison(judgement: Judgement): Compared | undefined {
  if (judgement.kind === "compared") return judgement;
  if (judgement.kind === "settled") return undefined;
  const parts = judgement.from.filter(isJudgement).filter((part) => part.verdict === judgement.verdict);
  const exact = parts.find((part) => Object.is(part.margin, judgement.margin));
  const chosen = exact ?? parts[0];
  return chosen === undefined ? undefined : decidingComparison(chosen);
}

/** Where facts decide rather than numbers: the reason, or the facts, in words; empty where a comparison decides. */
export function decidingFacts(judgement: Judgement): string {
  if (judgement.kind === "compared") return "";
  if (judgement.kind === "settled") {
    return judgement.why !== "" ? judgement.why : factsOf(judgement);
  }
  const part = judgement.from.filter(isJudgement).find(({ verdict }) => verdict === judgement.verdict);
  return part === undefined ? "" : decidingFacts(part);
}

function factsOf({ from }: Settled): string {
  return from
    .flatMap((node) => (node.kind === "fact" ? [`${node.matter.name}: ${factWord(node.word)}`] : []))
    .join(", ");
}

function factWord(word: string | boolean): string {
  return word === true ? WORDS.yes : word === false ? WORDS.no : spoken(word);
}

/**
 * The parts of a judgement that are not met beside the one that decides, where every part has to be: a device can be too
 * slow and have a dead button, and both have to be put right.
 */
export function alsoNotMet(judgement: Judgement): readonly Judgement[] {
  const failed = failedParts(judgement);
  const chosen = decidingComparison(judgement);
  return failed.filter((part, i) => (chosen === undefined ? i > 0 : decidingComparison(part) !== chosen));
}

function failedParts(judgement: Judgement): readonly Judgement[] {
  if (judgement.verdict !== "not-met") return [];
  if (judgement.kind !== "combined") return [judgement];
  const failed = judgement.from.filter(isJudgement).filter(({ verdict }) => verdict === "not-met");
  if (judgement.rule === "all") return failed.flatMap(failedParts);
  // Of ways of which one would be enough, the one that comes nearest is told.
  const nearest = failed.find(({ margin }) => Object.is(margin, judgement.margin)) ?? failed[0];
  return nearest === undefined ? [] : failedParts(nearest);
}

/** One part in a line: its comparison, or the facts that decide it. */
export function partWords(part: Judgement): string {
  const compared = decidingComparison(part);
  if (compared !== undefined) return comparisonWords(compared);
  return part.kind === "settled" && part.why !== "" ? `${part.matter.name}: ${part.why}` : decidingFacts(part);
}

function isJudgement(node: { readonly kind: string }): node is Judgement {
  return node.kind === "compared" || node.kind === "combined" || node.kind === "settled";
}

/** The two sides of a comparison. */
export function sides(compared: Compared): readonly [Evidence<Unit>, Evidence<Unit>] {
  const [left, limit] = compared.from;
  return [left as Evidence<Unit>, limit as Evidence<Unit>];
}

/** "Zs,hot 1.28 Ω at most Zs,max 1.37 Ω"; a limit that is itself a band shows it, since it can decide the verdict. */
export function comparisonWords(compared: Compared, relation: Readonly<Record<Relation, string>> = RELATION): string {
  const [left, limit] = sides(compared);
  const [value, most] = valuesApart(left, limit);
  const band = bandWords(limit);
  return `${nameOf(left)} ${value} ${relation[compared.relation]} ${nameOf(limit)} ${most}${band === "" ? "" : ` (${band})`}`;
}

function nameOf({ term }: Evidence<Unit>): string {
  return term.symbol || term.name;
}
