import {
  ALWAYS,
  type ContestedPoint,
  type Contradiction,
  type Departure,
  type Expression,
  type FactOf,
  type HarmPath,
  type Layer,
  NEVER,
  stateIs,
} from "@good-grounds/core";
import type { Condition } from "../document/condition.ts";
import type { Amount, Document, Fact, LayerNode, Point } from "../document/document.ts";
import type { TextFault } from "../text/fault.ts";
import { nearTo } from "../text/near.ts";
import { TOPIC_GROUPS, type Topic, type TopicGroup } from "../topic.ts";
import { type Asked, askedIn } from "./asked.ts";
import { dangersOf } from "./dangers.ts";
import { type Draft, type Rules, statements } from "./draft.ts";
import { examplesOf } from "./example.ts";
import { expressionOf } from "./expression.ts";
import { checkValue, factOf } from "./fact.ts";
import { formerlyOf } from "./formerly.ts";
import { nameFault } from "./name.ts";
import { restricted } from "./restrict.ts";
import { clientOf, plainOf, remediesOf } from "./said.ts";
import { Scope } from "./scope.ts";
import type { Shared } from "./shared.ts";
import { checkCircles, checkFactsOnly } from "./state-faults.ts";
import { statesUnder } from "./states.ts";
import { checkTwice } from "./twice.ts";

/** A topic as its text says it; undefined with a fault where the text does not hold together. */
export function topicOf(
  document: Document,
  shared: Shared,
): { readonly topic?: Topic; readonly faults: readonly TextFault[] } {
  const scope = new Scope(document, shared);
  const given = givenIn(document, scope);
  const { states, settled } = statesUnder(scope, given);
  const rule = (condition: Condition, within: readonly string[]): Expression =>
    restricted(expressionOf(condition, scope, within), settled);
  checkTwice(document, scope);
  checkCircles(statements({ document }, "state"), scope);
  const wrong = nameFault(document.id.text);
  if (wrong !== undefined) scope.fault(document.id, wrong.found, wrong.expected, wrong.advice);
  const group = groupOf(document, scope);
  const rules = { document, scope, given, rule };
  const ruled = {
    paths: routesOf(rules),
    departures: departuresOf(rules),
    ...dangersOf(rules),
    ...contradictionsOf(rules),
    client: clientOf(rules),
  };
  const asked = askedIn(new Set(document.uses.map(({ text }) => text)), scope, states, ruled);
  const facts = factsOf(scope, given, asked);
  const draft = { ...rules, facts };
  const topic: Topic = Object.freeze({
    id: document.id.text,
    title: document.title,
    group: group ?? TOPIC_GROUPS[0],
    items: document.items.map(({ text }) => text),
    facts,
    shared: scope
      .all()
      .flatMap(({ kind, name: { text } }) => (kind !== "state" && scope.isShared(text) && asked(text) ? [text] : [])),
    ...takenAsGiven(scope, given),
    contested: pointsOf(scope, asked),
    ...ruled,
    ...(Object.keys(states).length === 0 ? {} : { states }),
    ...formerlyOf(draft, asked),
    plain: plainOf(draft),
    remedies: remediesOf(draft),
    examples: examplesOf(draft),
  });
  return scope.faults.length > 0 ? { faults: scope.faults } : { topic, faults: [] };
}

function groupOf({ group: word }: Document, scope: Scope): TopicGroup | undefined {
  // That there is none was told where it was read.
  if (word === undefined) return undefined;
  const found = TOPIC_GROUPS.find((one) => one === word.text);
  if (found !== undefined) return found;
  const [near] = nearTo(word.text, TOPIC_GROUPS);
  return scope.fault(
    word,
    `no part of the installation is called "${word.text}"`,
    `one of ${TOPIC_GROUPS.join(", ")}`,
    near === undefined ? "write one of these" : `is it "${near}"?`,
  );
}

function givenIn(document: Document, scope: Scope): ReadonlyMap<string, readonly string[]> {
  const given = new Map<string, readonly string[]>();
  for (const { fact, values } of statements({ document }, "given")) {
    const found = scope.find(fact);
    if (found?.kind !== "fact") {
      if (found !== undefined)
        scope.fault(fact, `"${fact.text}" is no fact with values`, "a shared fact", "only facts can be given");
      continue;
    }
    for (const value of values) checkValue(value, found, scope, []);
    if (given.has(fact.text))
      scope.fault(fact, `"${fact.text}" is given a second time`, "each fact once", "take one of the two away");
    given.set(
      fact.text,
      values.map(({ text }) => text),
    );
  }
  return given;
}

/** Of what the subject itself says, what the file may record as well and say otherwise. */
function takenAsGiven(scope: Scope, given: Draft["given"]): Pick<Topic, "given"> {
  const told = [...given].filter(([name]) => {
    const named = scope.get(name);
    return named?.kind === "fact" && named.recorded !== undefined;
  });
  return told.length === 0 ? {} : { given: Object.fromEntries(told) };
}

/** Every fact that may be asked; one that the subject settles is none. */
function factsOf(scope: Scope, given: Draft["given"], asked: Asked): Readonly<Record<string, FactOf>> {
  return Object.fromEntries(
    scope
      .all()
      .filter((named): named is Fact | Amount => named.kind === "fact" || named.kind === "amount")
      .flatMap((node) => {
        const left = given.get(node.name.text);
        if (left?.length === 1 || !asked(node.name.text)) return [];
        const fact = factOf(node, scope, left);
        return fact === undefined ? [] : [[node.name.text, fact] as const];
      }),
  );
}

function pointsOf(scope: Scope, asked: Asked): Readonly<Record<string, ContestedPoint>> {
  return Object.fromEntries(
    scope
      .all()
      .filter((named): named is Point => named.kind === "contested" && asked(named.name.text))
      .map(({ name, question, positions }) => [
        name.text,
        {
          question,
          positions: Object.fromEntries(
            positions.map((one) => [one.name.text, { words: one.clause, because: one.because }]),
          ),
        },
      ]),
  );
}

function routesOf(draft: Rules): readonly HarmPath[] {
  return statements(draft, "route").map((route) => {
    const within = [`route ${route.name.text}`];
    return {
      id: route.name.text,
      hazard: route.hazard,
      route: route.clause,
      exists: route.when === undefined ? ALWAYS : draft.rule(route.when, within),
      layers: route.layers.map((layer) => layerOf(layer, draft, [...within, `layer ${layer.name.text}`])),
    };
  });
}

function layerOf(
  { name, provision, words, regulations, holding }: LayerNode,
  draft: Rules,
  within: readonly string[],
): Layer {
  const shared = { id: name.text, provision, words, regulations };
  if (holding.kind === "one-event") return { ...shared, gone: NEVER, sound: NEVER };
  if (holding.kind === "when")
    return {
      ...shared,
      gone: holding.gone === undefined ? NEVER : draft.rule(holding.gone, within),
      sound: holding.sound === undefined ? NEVER : draft.rule(holding.sound, within),
    };
  const state = draft.scope.find(holding.state, within);
  if (state?.kind !== "state") {
    if (state !== undefined)
      draft.scope.fault(
        holding.state,
        `"${holding.state.text}" is no state`,
        "the name of a state",
        'name it under "uses"',
        within,
      );
    return { ...shared, gone: NEVER, sound: NEVER };
  }
  const worst = state.values.at(-1)?.name.text ?? "";
  const best = state.values[0]?.name.text ?? "";
  const { text } = holding.state;
  return { ...shared, gone: stateIs(text, worst), sound: stateIs(text, best) };
}

function departuresOf(draft: Rules): readonly Departure[] {
  return statements(draft, "departure").map(({ when, clause, regulations }) => ({
    when: draft.rule(when, ["departure"]),
    words: clause,
    regulations,
  }));
}

function contradictionsOf(draft: Rules): { readonly contradictions?: readonly Contradiction[] } {
  const shared = draft.scope.everywhere().filter((one) => one.kind === "contradiction");
  for (const { when } of statements(draft, "contradiction")) checkFactsOnly(when, draft.scope, ["contradiction"]);
  const contradictions = [...statements(draft, "contradiction"), ...shared].map(({ when, clause }) => ({
    when: draft.rule(when, ["contradiction"]),
    words: clause,
  }));
  const possible = contradictions.filter(({ when }) => when.op !== "never");
  return possible.length === 0 ? {} : { contradictions: possible };
}
