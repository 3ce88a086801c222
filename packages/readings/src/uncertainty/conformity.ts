import {
  type AcceptanceRule,
  bothOf,
  type Combined,
  type Compared,
  type ComparedConformity,
  type Conformity,
  type ConformityNote,
  eitherOf,
  type Finding,
  isOpen,
  type Judgement,
  type Settled,
  type Verdict,
  type Weighing,
} from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { comparedConformity } from "./compared.ts";

type Part = Omit<Conformity, "rule"> & {
  /** Comparisons whose probabilities went into this one. */
  readonly count: number;
};

/** The rule that holds where a file names none. */
export const DEFAULT_RULE: AcceptanceRule = "simple";

/**
 * How sure a judgement is, by the errors of what it rests on, and what it comes to under each rule. The judgement must have
 * kept its lines. Parts that all have to be met give at least the sum of their chances less what is over one; of parts of
 * which one is enough, the surest counts: both hold however the parts hang together.
 */
export function conformityOf(judgement: Judgement, rule: AcceptanceRule = DEFAULT_RULE): Conformity {
  const { count: _, ...part } = partOf(judgement);
  return { ...part, rule };
}

/** How sure every finding of a weighing is, by the rule the inspection names. */
export function conformities(weighing: Weighing, installation: Installation): ReadonlyMap<Finding, Conformity> {
  const rule = installation.decisionRule ?? DEFAULT_RULE;
  const all = [...weighing.supply, ...weighing.boards.flat(), ...weighing.circuits.flat()];
  return new Map(all.map((finding) => [finding, conformityOf(finding.judgement, rule)]));
}

function partOf(judgement: Judgement): Part {
  switch (judgement.kind) {
    case "compared":
      return ofCompared(judgement);
    case "settled":
      return ofSettled(judgement);
    case "combined":
      return ofCombined(judgement);
  }
}

function ofCompared(judgement: Compared): Part {
  const found = comparedConformity(judgement);
  if (found === undefined) return { ...ofFacts(judgement.verdict), kind: kindOf(judgement.relation) };
  const { probability, lowest, highest, decision, notes } = found;
  return { kind: kindOf(found.relation), probability, lowest, highest, decision, notes, deciding: found, count: 1 };
}

function kindOf(relation: Compared["relation"]): "limit" | "agreement" {
  return relation === "at-most" || relation === "at-least" ? "limit" : "agreement";
}

function ofSettled({ verdict }: Settled): Part {
  return ofFacts(verdict);
}

function ofFacts(verdict: Verdict): Part {
  const sure = verdict === "met" ? 1 : verdict === "not-met" ? 0 : null;
  return {
    kind: "facts",
    probability: sure,
    lowest: sure ?? 0,
    highest: sure ?? 1,
    decision: { simple: verdict, guarded: verdict },
    notes: [],
    deciding: null,
    count: 0,
  };
}

function ofCombined({ rule, from }: Combined): Part {
  const parts = from
    .map((part) => partOf(part as Judgement))
    .filter(({ decision }) => decision.simple !== "not-applicable");
  const join = rule === "all" ? bothOf : eitherOf;
  const decision = {
    simple: parts.map((part) => part.decision.simple).reduce(join, "not-applicable"),
    guarded: parts.map((part) => part.decision.guarded).reduce(join, "not-applicable"),
  };
  const limits = parts.some(({ kind }) => kind === "limit");
  // The chance of a difference and the probability of a limit are not the same kind of number and are never mixed.
  const counted = limits ? parts.filter(({ kind }) => kind !== "agreement") : parts;
  const notes = new Set<ConformityNote>(parts.flatMap((part) => part.notes));
  if (counted.length < parts.length) notes.add("agreement-apart");
  const figures = rule === "all" ? everyPart(counted, limits) : onePart(counted, decision.simple);
  const chosen = decidingPart(parts, decision.simple, rule);
  return {
    kind: limits ? "limit" : parts.some(({ kind }) => kind === "agreement") ? "agreement" : "facts",
    ...figures,
    decision,
    notes: [...notes],
    deciding: chosen?.deciding ?? null,
    count: parts.reduce((sum, part) => sum + part.count, 0),
  };
}

type Figures = Pick<Part, "probability" | "lowest" | "highest">;

/** All have to be met: Bonferroni's and Fréchet's bounds. Of agreements, the least chance times their number. */
function everyPart(parts: readonly Part[], limits: boolean): Figures {
  if (parts.length === 0) return { probability: null, lowest: 0, highest: 1 };
  const highest = Math.min(...parts.map((part) => part.highest));
  const agreements = parts.filter(({ kind }) => kind === "agreement");
  if (!limits && agreements.length > 0) return allAgree(parts);
  const less = (chances: readonly number[]) =>
    Math.max(
      0,
      chances.reduce((sum, chance) => sum - (1 - chance), 1),
    );
  const known = parts.flatMap(({ probability }) => probability ?? []);
  return {
    probability: known.length === parts.length ? less(known) : known.includes(0) ? 0 : null,
    lowest: less(parts.map((part) => part.lowest)),
    highest,
  };
}

function allAgree(parts: readonly Part[]): Figures {
  const least = (chances: readonly number[], of: number) => Math.min(1, Math.min(...chances) * Math.max(1, of));
  const number = parts.reduce((sum, { count }) => sum + count, 0);
  const known = parts.flatMap(({ probability }) => probability ?? []);
  return {
    probability: known.length === parts.length ? least(known, number) : known.includes(0) ? 0 : null,
    lowest: least(
      parts.map((part) => part.lowest),
      1,
    ),
    highest: least(
      parts.map((part) => part.highest),
      number,
    ),
  };
}

/** One part met is enough: never less than the surest of them. */
function onePart(parts: readonly Part[], verdict: Verdict): Figures {
  const known = parts.flatMap(({ probability }) => probability ?? []);
  const best = known.length === 0 ? null : Math.max(...known);
  return {
    // With a part open, a figure stands only where it bears the verdict without that part.
    probability: known.length === parts.length || verdict === "met" ? best : null,
    lowest: Math.max(0, ...parts.map((part) => part.lowest)),
    highest: Math.min(
      1,
      parts.reduce((sum, part) => sum + part.highest, 0),
    ),
  };
}

/** The part whose comparison bears the decision: the least sure of those that have to hold, the surest where one is enough. */
function decidingPart(parts: readonly Part[], verdict: Verdict, rule: Combined["rule"]): Part | undefined {
  const compared = parts.filter(({ deciding }) => deciding !== null);
  const bearing = compared.filter(({ decision }) => decision.simple === verdict);
  const from = bearing.length > 0 ? bearing : isOpen(verdict) ? compared : [];
  const sign = rule === "all" ? 1 : -1;
  return from.toSorted((a, b) => sign * (rank(a) - rank(b)))[0];
}

function rank({ probability, lowest }: Part): number {
  return probability ?? lowest;
}

/** For tests and screens: the comparisons of a judgement, each with its doubt. */
export function comparedParts(judgement: Judgement): readonly ComparedConformity[] {
  if (judgement.kind === "settled") return [];
  if (judgement.kind === "compared") return [comparedConformity(judgement) ?? []].flat();
  return judgement.from.flatMap((part) => comparedParts(part as Judgement));
}
