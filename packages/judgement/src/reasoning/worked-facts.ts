import {
  type Answer,
  type Conclusion,
  type Finding,
  type Issue,
  type Judgement,
  Reckoner,
  type Verdict,
  type Worked,
} from "@good-grounds/core";
import { COMPUTATIONS } from "../computations.ts";
import { givenFromText } from "../given.ts";
import type { Topic } from "../topics/topic.ts";

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
  for (const { worked } of Object.values(topic.facts)) {
    const one = worked === undefined ? undefined : COMPUTATIONS.get(worked.by);
    if (worked === undefined || one === undefined || !("conclude" in one)) continue;
    for (const need of Object.keys(one.needs)) names.set(kebab(need), [...(names.get(kebab(need)) ?? []), worked.by]);
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
    const one = link === undefined ? undefined : COMPUTATIONS.get(link.by);
    if (link === undefined || one === undefined || !("conclude" in one)) continue;
    const text = figuresFor(topic, link.by, figures);
    if (Object.keys(text).length === 0) continue;
    const made = givenFromText(one.needs, text);
    if (!made.ok) {
      // Two facts may rest on one computation; what is wrong with its figures is said once.
      if (!tried.has(link.by))
        issues.push(...made.issues.map((issue) => ({ ...issue, path: issue.path.map((step) => kebab(String(step))) })));
      tried.add(link.by);
      continue;
    }
    const judgement = judgementFor(link, one.conclude(made.given, new Reckoner(true)));
    if (judgement !== undefined)
      worked.push({ fact, by: link.by, value: answerFor(link, judgement.verdict), judgement });
  }
  return { worked, issues };
}

/** The figures given for a computation behind a topic, by its needs. */
export function figuresFor(
  topic: Topic,
  computation: string,
  figures: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const one = COMPUTATIONS.get(computation);
  if (one === undefined || !Object.values(topic.facts).some(({ worked }) => worked?.by === computation)) return {};
  return Object.fromEntries(
    Object.keys("needs" in one ? one.needs : {}).flatMap((need) => {
      const figure = Object.hasOwn(figures, kebab(need)) ? figures[kebab(need)] : undefined;
      return figure === undefined ? [] : [[need, figure] as const];
    }),
  );
}

/** Facts of a topic that the findings about its place answer; the worst finding of a check counts. */
export function factsFromFindings(topic: Topic, findings: readonly Finding[]): readonly WorkedFact[] {
  return Object.entries(topic.facts).flatMap(([fact, { worked: link }]) => {
    if (link === undefined) return [];
    const found = findings.flatMap((finding) => {
      const judgement = finding.check === link.by ? judgementFor(link, finding) : undefined;
      return judgement === undefined ? [] : [judgement];
    });
    const judgement =
      found.find(({ verdict }) => verdict === "not-met") ?? found.find(({ verdict }) => verdict !== "met") ?? found[0];
    return judgement === undefined ? [] : [{ fact, by: link.by, value: answerFor(link, judgement.verdict), judgement }];
  });
}

/** What of a conclusion a fact rests on: the whole, or the matter within it that the link names. */
export function judgementFor({ matter }: Worked, { judgement, settles }: Conclusion): Judgement | undefined {
  return matter === undefined ? judgement : settles?.find((one) => one.matter.id === matter);
}

/** What is said, completed by what was worked out; what somebody said stands, and where the two differ both are kept. */
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
    if (stated === undefined || typeof stated === "object") {
      facts[one.fact] = one.value;
      taken.push(one);
    } else if (wordOf(stated) !== one.value) against.push(one);
  }
  return { facts, taken, against };
}

function wordOf(answer: boolean | string): string {
  return answer === true ? "yes" : answer === false ? "no" : answer;
}

function answerFor({ met, notMet }: Worked, verdict: Verdict): string | null {
  return verdict === "met" ? met : verdict === "not-met" ? notMet : null;
}

export function kebab(name: string): string {
  return name.replaceAll(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase();
}
