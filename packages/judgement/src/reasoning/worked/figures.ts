import { COMPUTATIONS, givenFromText } from "@good-grounds/computations";
import { type Answer, type Conclusion, type FactOf, type Issue, Reckoner } from "@good-grounds/core";
import type { Topic } from "@good-grounds/topics";
import type { WorkedFact } from "../results.ts";
import { answered, judgedPart, partsOf } from "./link.ts";

/** Figures by name, in kebab case, as they are written. */
export type Figures = Readonly<Record<string, string>>;

const NEEDS = new WeakMap<Topic, ReadonlyMap<string, readonly string[]>>();

/** Names a topic takes besides its facts: what the computations behind them need, in kebab case. */
export function needsOf(topic: Topic): ReadonlyMap<string, readonly string[]> {
  const known = NEEDS.get(topic) ?? needsIn(topic);
  NEEDS.set(topic, known);
  return known;
}

function needsIn(topic: Topic): ReadonlyMap<string, readonly string[]> {
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

/** What is said of a topic, parted into answers to its facts and figures for the computations behind them. */
export function partedSaid(
  topic: Topic,
  said: Readonly<Record<string, Answer>>,
): { readonly facts: Readonly<Record<string, Answer>>; readonly figures: Figures } {
  const names = needsOf(topic);
  const isFigure = (name: string) => !Object.hasOwn(topic.facts, name) && names.has(name);
  const entries = Object.entries(said);
  return {
    facts: Object.fromEntries(entries.filter(([name]) => !isFigure(name))),
    figures: Object.fromEntries(
      entries.filter((entry): entry is [string, string] => isFigure(entry[0]) && typeof entry[1] === "string"),
    ),
  };
}

/** Works out the facts of a topic for which figures were given by hand. */
export function factsFromFigures(
  topic: Topic,
  figures: Figures,
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
  figures: Figures,
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
export function figuresFor(topic: Topic, computation: string, figures: Figures): Figures {
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

export function kebab(name: string): string {
  return name.replaceAll(/([a-z0-9])([A-Z])/g, "$1-$2").toLowerCase();
}
