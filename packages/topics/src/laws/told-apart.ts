import type { Document, Fact } from "../document/document.ts";
import type { Topic } from "../topic.ts";
import { areAlike, everyTwo, type Functions, functionsOf } from "./alike.ts";
import type { LawBreak } from "./law.ts";

const LAW = "told-apart";

/**
 * Every two values of a topic's own fact are told apart by some rule, sentence or remedy, or a line "alike" says why both
 * are offered; and no such line stands where something does tell them apart.
 */
export function valuesToldApart(topic: Topic, document: Document): readonly LawBreak[] {
  const own = factsOf(document).filter(({ name }) => Object.hasOwn(topic.facts, name.text));
  if (own.length === 0) return [];
  const ruled = functionsOf(topic);
  return own.flatMap((fact) => breaksOf(fact, [ruled], topic.id));
}

/** The same of the facts of a shared text: that one of the topics that ask it tells them apart is enough. */
export function sharedToldApart(document: Document, topics: readonly Topic[]): readonly LawBreak[] {
  const made = new Map<Topic, Functions>();
  const ruledOf = (topic: Topic): Functions => {
    const ruled = made.get(topic) ?? functionsOf(topic);
    made.set(topic, ruled);
    return ruled;
  };
  return factsOf(document).flatMap((fact) => {
    const asking = topics.filter(({ shared }) => shared.includes(fact.name.text));
    return asking.length === 0 ? [] : breaksOf(fact, asking.map(ruledOf), document.id.text);
  });
}

function factsOf({ statements }: Document): readonly Fact[] {
  return statements.filter((one): one is Fact => one.kind === "fact");
}

function breaksOf(fact: Fact, topics: readonly Functions[], where: string): readonly LawBreak[] {
  const names = fact.values.map(({ name }) => name.text);
  const tell = (at: Fact["at"], found: string, expected: string): LawBreak => ({
    law: LAW,
    topic: where,
    found,
    expected,
    at,
  });
  const excused = new Set(fact.alike.flatMap(({ values }) => pairsOf(values.map(({ text }) => text))));
  const alike = new Set(
    pairsOf(names).filter((pair) => !topics.some((ruled) => isToldApart(fact.name.text, pair, ruled))),
  );
  return [
    ...[...alike]
      .filter((pair) => !excused.has(pair))
      .map((pair) => {
        const words = pair.replace(" ", " and ");
        return tell(
          fact.at,
          `nothing tells ${words} of "${fact.name.text}" apart`,
          `a rule, sentence or "fits when" that does, or a line "alike ${words}: why both are offered"`,
        );
      }),
    ...fact.alike.flatMap(({ at, values }) =>
      pairsOf(values.map(({ text }) => text))
        .filter((pair) => !alike.has(pair))
        .map((pair) =>
          tell(
            at,
            `${pair.replace(" ", " and ")} of "${fact.name.text}" are told apart`,
            'no line "alike" for them: take it away',
          ),
        ),
    ),
  ];
}

/** Every two of these names as one word each, in the order of the names alone. */
function pairsOf(names: readonly string[]): readonly string[] {
  return everyTwo(names.length).map(([a, b]) => [names[a], names[b]].sort().join(" "));
}

function isToldApart(fact: string, pair: string, ruled: Functions): boolean {
  const variable = ruled.compiled.index.get(`fact ${fact}`) ?? -1;
  const values = ruled.compiled.variables[variable]?.cells.values ?? [];
  const [a = -1, b = -1] = pair.split(" ").map((value) => values.indexOf(value));
  return a >= 0 && b >= 0 && !areAlike(ruled, variable, a, b);
}
