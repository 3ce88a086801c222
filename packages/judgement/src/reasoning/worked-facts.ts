import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import {
  type Answer,
  type Conclusion,
  type FactOf,
  type Finding,
  type Issue,
  type Judgement,
  Reckoner,
  type Verdict,
  type Worked,
} from "@good-grounds/core";
import type { Topic } from "@good-grounds/topics";

/** A fact that a computation answers, with the judgement it rests on. */
export interface WorkedFact {
  readonly fact: string;
  readonly by: string;
  /** The value that follows, or null where the computation leaves it open. */
  readonly value: string | null;
  readonly judgement: Judgement;
}

/** Names a topic takes besides its facts: what the computations behind them need, in kebab case. */
export function needsOf(topic: Topic): ReadonlyMap<string, readonly string[]> {
  const names = new Map<string, string[]>();
  for (const { worked } of Object.values(topic.facts))
    for (const { by } of worked === undefined ? [] : partsOf(worked)) {
      const one = COMPUTATIONS.get(by);
      if (one === undefined || !("conclude" in one)) continue;
      for (const need of Object.keys(one.needs)) {
        const known = names.get(kebab(need)) ?? [];
        if (!known.includes(by)) names.set(kebab(need), [...known, by]);
      }
    }
  return names;
}

/** Works out the facts of a topic for which figures were given by hand. */
export function factsFromFigures(
  topic: Topic,
  figures: Readonly<Record<string, string>>,
): { readonly worked: readonly WorkedFact[]; readonly issues: readonly Issue[] } {
  const worked: WorkedFact[] = [];
  const issues: Issue[] = [];
  const tried = new Set<string>();
  for (const [fact, { worked: link }] of Object.entries(topic.facts)) {
    if (link === undefined) continue;
    const parts = partsOf(link).map((part) => {
      const made = concludedFrom(topic, part.by, figures);
      if (made === undefined || "judgement" in made) return judgedPart(part, made);
      // Two facts may rest on one computation; what is wrong with its figures is said once.
      if (!tried.has(part.by)) issues.push(...made.issues);
      tried.add(part.by);
      return judgedPart(part, undefined);
    });
    const answer = answered(fact, link, parts);
    if (answer !== undefined) worked.push(answer);
  }
  return { worked, issues };
}

/** What a computation concludes from figures given by hand; undefined where none were given for it. */
function concludedFrom(
  topic: Topic,
  by: string,
  figures: Readonly<Record<string, string>>,
): Conclusion | { readonly issues: readonly Issue[] } | undefined {
  const one = COMPUTATIONS.get(by);
  if (one === undefined || !("conclude" in one)) return undefined;
  const text = figuresFor(topic, by, figures);
  if (Object.keys(text).length === 0) return undefined;
  const made = givenFromText(one.needs, text);
  if (made.ok) return one.conclude(made.given, new Reckoner(true));
  return { issues: made.issues.map((issue) => ({ ...issue, path: issue.path.map((step) => kebab(String(step))) })) };
}

/** The figures given for a computation behind a topic, by its needs. */
export function figuresFor(
  topic: Topic,
  computation: string,
  figures: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const one = COMPUTATIONS.get(computation);
  const isBehind = ({ worked }: FactOf) => worked !== undefined && partsOf(worked).some(({ by }) => by === computation);
  if (one === undefined || !Object.values(topic.facts).some(isBehind)) return {};
  return Object.fromEntries(
    Object.keys("needs" in one ? one.needs : {}).flatMap((need) => {
      const figure = Object.hasOwn(figures, kebab(need)) ? figures[kebab(need)] : undefined;
      return figure === undefined ? [] : [[need, figure] as const];
    }),
  );
}

/**
 * Facts of a topic that the findings about its place answer. Several findings of one check, such as of two bonds, answer
 * only where they say the same: which of them the observation speaks of is not known.
 */
export function factsFromFindings(topic: Topic, findings: readonly Finding[]): readonly WorkedFact[] {
  return Object.entries(topic.facts).flatMap(([fact, { worked: link }]) => {
    if (link === undefined || link.findings === "none") return [];
    const parts = partsOf(link).map((part): JudgedPart => {
      const found = findings.flatMap((finding) => {
        const judgement = finding.check === part.by ? judgementFor(part, finding) : undefined;
        return judgement === undefined ? [] : [judgement];
      });
      const telling = found.find(({ verdict }) => verdict !== "met") ?? found[0];
      if (telling === undefined) return judgedPart(part, undefined);
      const isOne = found.every(({ verdict }) => verdict === telling.verdict);
      return { by: part.by, judgement: telling, verdict: isOne ? telling.verdict : "not-known" };
    });
    const { met: _, ...notMetOnly } = link;
    const answer = answered(fact, link.findings === "not-met-only" ? notMetOnly : link, parts);
    return answer === undefined ? [] : [answer];
  });
}

/** One computation of a link with what it says; nothing where it was not made. */
interface JudgedPart {
  readonly by: string;
  readonly verdict: Verdict;
  readonly judgement?: Judgement;
}

type LinkPart = Pick<Worked, "by" | "matter">;

/** The computations a link takes together: all of them have to be met, one that is not met is enough. */
function partsOf({ by, matter, and = [] }: Worked): readonly LinkPart[] {
  return [matter === undefined ? { by } : { by, matter }, ...and];
}

function judgedPart(part: LinkPart, conclusion: Conclusion | undefined): JudgedPart {
  const judgement = conclusion === undefined ? undefined : judgementFor(part, conclusion);
  return judgement === undefined
    ? { by: part.by, verdict: "not-known" }
    : { by: part.by, verdict: judgement.verdict, judgement };
}

/** The answer of a link's computations together; undefined where none of them was made. */
function answered(fact: string, link: Worked, parts: readonly JudgedPart[]): WorkedFact | undefined {
  const notMet = parts.find(({ verdict }) => verdict === "not-met");
  const made = parts.filter(({ judgement }) => judgement !== undefined);
  const telling = notMet ?? made.find(({ verdict }) => verdict !== "met") ?? made[0];
  if (telling?.judgement === undefined) return undefined;
  const isMet = parts.every(({ verdict }) => verdict === "met");
  const value = (notMet === undefined ? (isMet ? link.met : undefined) : link.notMet) ?? null;
  return { fact, by: telling.by, value, judgement: telling.judgement };
}

/** What of a conclusion a fact rests on: the whole, or the matter within it that the link names. */
export function judgementFor({ matter }: LinkPart, { judgement, settles }: Conclusion): Judgement | undefined {
  return matter === undefined ? judgement : settles?.find((one) => one.matter.id === matter);
}

/**
 * What is said, completed by what was worked out; what somebody said stands, and where the two differ both are kept. A
 * limitation is something said as well: a computation does not lift it, and what it says is shown beside.
 */
export function completed(
  said: Readonly<Record<string, Answer>>,
  worked: readonly WorkedFact[],
): {
  readonly facts: Readonly<Record<string, Answer>>;
  readonly taken: readonly WorkedFact[];
  readonly against: readonly WorkedFact[];
} {
  const facts: Record<string, Answer> = { ...said };
  const taken: WorkedFact[] = [];
  const against: WorkedFact[] = [];
  for (const one of worked) {
    if (one.value === null) continue;
    const stated = Object.hasOwn(said, one.fact) ? said[one.fact] : undefined;
    if (stated === undefined || (typeof stated === "object" && stated.notKnown !== "limited")) {
      facts[one.fact] = one.value;
      taken.push(one);
    } else if (typeof stated === "object" || !mayBothBe(wordsOf(stated), one.value.split(" | "))) against.push(one);
  }
  return { facts, taken, against };
}

function mayBothBe(stated: readonly string[], worked: readonly string[]): boolean {
  return stated.some((value) => worked.includes(value));
}

/** The values an answer leaves possible. */
function wordsOf(answer: boolean | string): readonly string[] {
  if (typeof answer === "boolean") return [answer ? "yes" : "no"];
  return answer.split("|").map((value) => value.trim().toLowerCase());
}

export function kebab(name: string): string {
  return name.replaceAll(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase();
}
