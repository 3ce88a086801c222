import {
  ACCEPTANCE_RULES,
  type Conformity,
  type ConformityNote,
  type ErrorSource,
  type Judgement,
  printQuantity,
} from "@good-grounds/core";
import { VERDICT } from "../locales/labels.ts";
import { PROBABILITY } from "../locales/probability-en.ts";

/** A probability below this is worth a word; so is a difference that errors alone bring about less often than the rest. */
const SURE = 0.95;

/** Ranges that move a probability by less than this are not mentioned. */
const TELLING = 0.005;

/** The part of the variance from which on an assumption about a source is told. */
const WORTH_SAYING = 0.05;

/** Sources of doubt that are named. */
const NAMED = 3;

/** "93 %", "99.2 %", "over 99.9 %". Never a certainty that rounding made. */
export function percentWords(chance: number): string {
  if (chance >= 0.9995) return "over 99.9\u00a0%";
  if (chance <= 0.0005) return "under 0.1\u00a0%";
  const percent = chance * 100;
  return `${percent >= 99 || percent < 1 ? percent.toFixed(1) : percent.toFixed(0)}\u00a0%`;
}

/** Whether numbers with errors have a part in a judgement at all. */
function hasDoubt({ deciding }: Conformity): boolean {
  return deciding !== null && deciding.budget.length > 0;
}

/** Whether a reader has to be told how sure a finding is: it is too near to call, or not 95 % sure. */
export function inDoubt(conformity: Conformity, verdict: Judgement["verdict"]): boolean {
  if (!hasDoubt(conformity) || verdict === "not-known" || verdict === "not-applicable") return false;
  const { kind, probability, highest } = conformity;
  if (verdict === "too-near") return true;
  // Two accounts may lie apart by chance; only what errors hardly ever bring about is worth a word.
  if (kind === "agreement") return highest < 1 - SURE;
  return (probability ?? conformity.lowest) < SURE;
}

/** Whether a limit that is met as read is not 95 % sure to be met. */
export function metInDoubt(conformity: Conformity, verdict: Judgement["verdict"]): boolean {
  return verdict === "met" && conformity.kind === "limit" && inDoubt(conformity, verdict);
}

/** "Probability that it is met: 93 % (U = 0.07 Ω, k = 2)" in one clause. */
export function probabilityClause(conformity: Conformity): string {
  const { kind, probability, lowest, highest, deciding } = conformity;
  const chance = probability === null ? undefined : percentWords(probability);
  const head =
    chance === undefined
      ? PROBABILITY.none
      : kind === "agreement"
        ? PROBABILITY.agrees(chance)
        : PROBABILITY.met(chance);
  const beside = [
    highest - lowest > TELLING ? PROBABILITY.between(percentWords(lowest), percentWords(highest)) : "",
    deciding === null || deciding.expanded === 0
      ? ""
      : PROBABILITY.expanded(printQuantity(deciding.expanded, deciding.unit)),
  ].filter((part) => part !== "");
  return `${head}${beside.length === 0 ? "" : ` (${beside.join("; ")})`}.`;
}

/** The same with what the chosen rule makes of it, for where there is room for a line. */
export function decisionClause(conformity: Conformity): string {
  const { rule, decision } = conformity;
  return `${probabilityClause(conformity)} ${capital(PROBABILITY.rule[rule])}: ${VERDICT[decision[rule]]}.`;
}

/** How sure a finding is, in sentences: probability, what each rule makes of it, where the doubt comes from, notes. */
export function probabilityWords(conformity: Conformity): readonly string[] {
  if (!hasDoubt(conformity)) return [];
  const { rule, decision, deciding, notes } = conformity;
  const rules = ACCEPTANCE_RULES.map(
    (one) => `${PROBABILITY.rule[one]}${one === rule ? ` (${PROBABILITY.chosen})` : ""}: ${VERDICT[decision[one]]}`,
  );
  const budget = deciding?.budget ?? [];
  const sources = budget.slice(0, NAMED).map(sourceWords);
  return [
    probabilityClause(conformity),
    `${capital(rules.join("; "))}.`,
    ...(sources.length === 0 ? [] : [`${PROBABILITY.doubtFrom}: ${sources.join(", ")}.`]),
    ...notes.filter((note) => isTold(note, budget)).map((note) => PROBABILITY.note[note]),
  ];
}

/** Ranges show in the probability itself; leads that add next to nothing are not worth a sentence. */
function isTold(note: ConformityNote, budget: readonly ErrorSource[]): boolean {
  if (note === "leads-assumed") return budget.some(({ kind, share }) => kind === "leads" && share >= WORTH_SAYING);
  return note !== "ranges";
}

function sourceWords({ kind, term, share, values }: ErrorSource): string {
  const name = term.symbol || term.name;
  const shared = values > 1 ? PROBABILITY.shared(values) : "";
  return `${PROBABILITY.source[kind]} ${name}${shared} ${percentWords(share)}`;
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
