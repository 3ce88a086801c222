import type { Danger, Expression, FactOf, HarmPath, Subject } from "@good-grounds/core";
import {
  ALWAYS,
  all,
  amount,
  any,
  atLeast,
  below,
  type EFFORTS,
  held,
  is,
  moreThan,
  NEVER,
  not,
  oneKind,
  ranked,
  yesNo,
} from "@good-grounds/core";
import fc from "fast-check";

/**
 * Shapes of the topics, counted over the 183 there were in November 2026: how often each number of facts, values, routes
 * and so on came up. Random subjects have them in the same shares, but for quantities and
 * contradictions, of which the topics had few or none: those come up often enough to be tried.
 */
const COUNTED = Object.freeze({
  facts: { 1: 1, 2: 23, 3: 79, 4: 66, 5: 11, 6: 3 },
  kinds: { "yes-no": 301, ranked: 289, oneKind: 26, amount: 31 },
  values: { 2: 78, 3: 171, 4: 57, 5: 6, 6: 1, 7: 2 },
  efforts: { glance: 333, opened: 170, measured: 107, beyond: 11 },
  paths: { 0: 6, 1: 101, 2: 60, 3: 14, 4: 2 },
  layers: { 1: 52, 2: 199, 3: 20 },
  departures: { 0: 3, 1: 111, 2: 57, 3: 12 },
  dangers: { 0: 152, 1: 29, 2: 2 },
  points: { 0: 80, 1: 93, 2: 10 },
  positions: { 2: 101, 3: 11, 4: 1 },
  /** Rules that are more than a constant, by how deep alls and anys are nested. */
  nesting: { 0: 454, 1: 262, 2: 107, 3: 20, 4: 6 },
  exists: { always: 57, never: 0, rule: 214 },
  gone: { always: 30, never: 196, rule: 284 },
  sound: { always: 0, never: 453, rule: 57 },
  /** Of the leaves of rules: 632 of 793 about an ordered fact are "this or worse", 135 of 1545 are positions, 69 are turned round. */
  orWorse: { yes: 632, no: 161 },
  leaves: { fact: 1410, held: 135 },
  turned: { yes: 69, no: 1476 },
  contradictions: { 0: 5, 1: 4, 2: 1 },
});

type Draw = fc.GeneratorValue;

/** One of the keys, as often as it was counted. */
function pick<const Counts extends Readonly<Record<string, number>>>(g: Draw, counts: Counts): keyof Counts & string {
  const options = Object.entries(counts).map(([key, weight]) => ({ weight, arbitrary: fc.constant(key) }));
  return g(() => fc.oneof(...options.filter(({ weight }) => weight > 0))) as keyof Counts & string;
}

function times<One>(g: Draw, counts: Readonly<Record<string, number>>, make: (i: number) => One): readonly One[] {
  return Array.from({ length: Number(pick(g, counts)) }, (_, i) => make(i));
}

function someFact(g: Draw): FactOf {
  const asks = { asks: "?", effort: pick(g, COUNTED.efforts) as (typeof EFFORTS)[number] };
  const values = () => Object.fromEntries(times(g, COUNTED.values, (i) => [`v${i}`, `v${i}`]));
  switch (pick(g, COUNTED.kinds)) {
    case "yes-no":
      return yesNo({ ...asks, yes: "y", no: "n", worse: g(fc.constantFrom, "yes", "no", null) });
    case "ranked":
      return ranked({ ...asks, values: values() });
    case "oneKind":
      return oneKind({ ...asks, values: values() });
    case "amount":
      return amount({ ...asks, name: "d", unit: "metre", worse: g(fc.constantFrom, "higher", "lower", null) });
  }
}

function someLeaf(g: Draw, facts: Subject["facts"], contested: Subject["contested"]): Expression {
  const points = Object.keys(contested);
  if (points.length > 0 && pick(g, COUNTED.leaves) === "held") {
    const point = g(fc.constantFrom, ...points);
    return held(point, g(fc.constantFrom, ...Object.keys(contested[point]?.positions ?? {})));
  }
  const name = g(fc.constantFrom, ...Object.keys(facts));
  const fact = facts[name] as FactOf;
  if (fact.kind === "quantity")
    return g(fc.constantFrom, atLeast, moreThan, below)(name, g(fc.constantFrom, "3 mm", "7 mm"));
  if (fact.kind === "yes-no") return is(name, g(fc.constantFrom, "yes", "no"));
  const values = Object.keys(fact.values);
  if (fact.ordered && pick(g, COUNTED.orWorse) === "yes")
    return is(name, ...values.slice(g(fc.integer, { min: 1, max: values.length - 1 })));
  return is(name, ...g(fc.subarray, values, { minLength: 1, maxLength: values.length - 1 }));
}

type Parts = Pick<Subject, "facts" | "contested">;

function someRule(g: Draw, parts: Parts, nesting = Number(pick(g, COUNTED.nesting))): Expression {
  if (nesting === 0) {
    const leaf = someLeaf(g, parts.facts, parts.contested);
    return pick(g, COUNTED.turned) === "yes" ? not(leaf) : leaf;
  }
  const rest = Array.from({ length: g(fc.integer, { min: 1, max: 2 }) }, () =>
    someRule(g, parts, g(fc.integer, { min: 0, max: nesting - 1 })),
  );
  return g(fc.constantFrom, all, any)(someRule(g, parts, nesting - 1), ...rest);
}

function ruleOr(g: Draw, counts: (typeof COUNTED)["exists" | "gone" | "sound"], parts: Parts): Expression {
  const kind = pick(g, counts);
  return kind === "always" ? ALWAYS : kind === "never" ? NEVER : someRule(g, parts);
}

/** A subject as the topics are made, of any content. */
export function someSubject(g: Draw): Subject {
  const facts = Object.fromEntries(times(g, COUNTED.facts, (i) => [`f${i}`, someFact(g)]));
  const point = () => ({
    question: "?",
    positions: Object.fromEntries(times(g, COUNTED.positions, (i) => [`p${i}`, { words: "w", because: "b" }])),
  });
  const contested = Object.fromEntries(times(g, COUNTED.points, (i) => [`c${i}`, point()]));
  const parts = { facts, contested };
  const layer = (i: number) => ({
    id: `l${i}`,
    provision: "insulation" as const,
    words: "w",
    gone: ruleOr(g, COUNTED.gone, parts),
    sound: ruleOr(g, COUNTED.sound, parts),
  });
  return {
    id: "any",
    ...parts,
    paths: times(
      g,
      COUNTED.paths,
      (i): HarmPath => ({
        id: `r${i}`,
        hazard: "burns-or-fire",
        route: "r",
        exists: ruleOr(g, COUNTED.exists, parts),
        layers: times(g, COUNTED.layers, layer),
      }),
    ),
    departures: times(g, COUNTED.departures, () => ({
      when: someRule(g, parts),
      words: "w",
      regulations: ["1"],
    })),
    dangers: times(
      g,
      COUNTED.dangers,
      (i): Danger => ({
        id: `d${i}`,
        least: g(fc.constantFrom, "C1", "C2"),
        when: someRule(g, parts),
        words: "w",
        regulations: ["1"],
      }),
    ),
    contradictions: times(g, COUNTED.contradictions, () => ({
      when: someRule(g, { facts, contested: {} }, g(fc.integer, { min: 1, max: 2 })),
      words: "w",
    })),
  };
}
