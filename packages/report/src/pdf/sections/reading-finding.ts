import {
  type Compared,
  type Evidence,
  type Finding,
  isKnown,
  type Judgement,
  missingOf,
  nodesOf,
  SEVERITY,
  type Unit,
  type Verdict,
} from "@good-grounds/core";
import { marginBar } from "../../drawings/margin-bar.ts";
import type { ReportInput } from "../../input.ts";
import { calculationWords } from "../../locales/calculations-en.ts";
import { RELATION, WORDS } from "../../locales/en.ts";
import { GRADE, VERDICT_SHORT } from "../../locales/labels.ts";
import { REPORT } from "../../locales/report-en.ts";
import { comparisonWords, decidingComparison, decidingFacts, sides } from "../../words/comparison.ts";
import { marginWords, valuesApart } from "../../words/figure.ts";
import { isExpected, verdictOf } from "../../words/verdict.ts";

/** Verdicts that a reader has to know about. */
export function needsAttention(verdict: Verdict): boolean {
  return verdict === "not-met" || verdict === "too-near" || verdict === "not-known";
}

export function worstVerdict(findings: readonly Finding[]): Verdict {
  let worst: Verdict = "not-applicable";
  for (const { judgement } of findings) if (SEVERITY[judgement.verdict] > SEVERITY[worst]) worst = judgement.verdict;
  return worst;
}

/** The worst verdict in a word; where all are met and some of them only by what is expected, that. */
export function worstWord(findings: readonly Finding[]): string {
  const worst = worstVerdict(findings);
  const expected = findings.some(
    ({ judgement: { verdict, grade } }) => verdict === "met" && isExpected(grade, verdict),
  );
  return worst === "met" && expected ? GRADE.expected : VERDICT_SHORT[worst].toLowerCase();
}

export function titleOf(checks: ReportInput["checks"], id: string): string {
  return checks.find((label) => label.id === id)?.title ?? calculationWords(id);
}

/** What is missing under a judgement, each thing once, with the reason that was given. */
export function missingWords(judgement: Judgement): string {
  const all = missingOf(judgement).map((leaf) => {
    const name = leaf.kind === "not-known" ? leaf.term.name : leaf.matter.name;
    return leaf.detail.reason === "" ? name : `${name} (${leaf.detail.reason})`;
  });
  return [...new Set(all)].join("; ");
}

/** What decides, in one clause; empty where nothing can be said beyond the verdict. */
export function decidingWords(judgement: Judgement): string {
  if (judgement.verdict === "not-known") return `${WORDS.missing}: ${missingWords(judgement)}`;
  const compared = decidingComparison(judgement);
  return compared === undefined ? decidingFacts(judgement) : comparison(compared);
}

/** "Sp 1.5 mm² should be at least S,min 1.84 mm²": reads the same whether it is met or not. */
function comparison(compared: Compared): string {
  return comparisonWords(compared, REPORT.relation);
}

/** A judgement in one line: its verdict and what decides. */
export function verdictLine(judgement: Judgement): string {
  const words = decidingWords(judgement);
  return words === "" ? verdictOf(judgement) : `${verdictOf(judgement)}; ${words}`;
}

/** Figures from memory that a judgement rests on, by name and source, each once. */
export function figuresFromMemory(judgement: Judgement): readonly string[] {
  const found = new Set<string>();
  for (const node of nodesOf(judgement)) {
    if (node.kind !== "published" && node.kind !== "assumed" && node.kind !== "expected") continue;
    const { source } = node.detail;
    if (source?.basis !== "memory") continue;
    found.add(`${node.term.symbol || node.term.name} (${source.work})`);
  }
  return [...found];
}

/** The permitted disconnection time a judgement rests on. */
export function permittedTime(judgement: Judgement): Evidence<Unit> | undefined {
  for (const node of nodesOf(judgement)) {
    if (node.kind === "published" && node.term.id === "permitted-disconnection-time") return node;
  }
  return undefined;
}

interface Bar {
  readonly svg: string;
  /** What the bar says, for readers who do not see it. */
  readonly words: string;
  /** The limit as it is written under the bar. */
  readonly limit: string;
}

/** The margin bar of a judgement that numbers decide. */
export function barOf(judgement: Judgement): Bar | undefined {
  const compared = decidingComparison(judgement);
  if (compared === undefined || judgement.verdict === "not-known") return undefined;
  const [left, limit] = sides(compared) as readonly (Evidence<Unit> | undefined)[];
  if (left === undefined || limit === undefined || !isKnown(left) || !isKnown(limit) || !(limit.value > 0))
    return undefined;
  const words = [comparison(compared), verdictOf(judgement), marginWords(compared)]
    .filter((part) => part !== "")
    .join(", ");
  const { value, low, high } = left;
  const svg = marginBar({
    value,
    low,
    high,
    limit: limit.value,
    limitLow: limit.low,
    limitHigh: limit.high,
    relation: compared.relation,
    verdict: judgement.verdict,
    words,
  });
  const sign =
    compared.relation === "at-most" ? "≤" : compared.relation === "at-least" ? "≥" : RELATION[compared.relation];
  // A limit of another quantity than the loop it stands beside says of which: a voltage is no limit of an impedance.
  const of = left.term.unit === "ohm" ? "" : `${left.term.symbol || left.term.name} `;
  return { svg, words, limit: `${of}${sign} ${valuesApart(left, limit)[1]}` };
}
