import type { Condition, Word } from "../document/condition.ts";
import type { State } from "../document/document.ts";
import { restsOn } from "./rests-on.ts";
import type { Scope } from "./scope.ts";
import { namesIn } from "./shared.ts";

/** Tells a state that is worked out from itself. */
export function checkCircles(states: readonly State[], scope: Scope): void {
  for (const state of states) {
    const through = state.values.flatMap(({ when }) => (when === undefined ? [] : restsOn(namesIn(when), scope)));
    if (through.includes(state.name.text))
      scope.fault(
        state.name,
        `"${state.name.text}" is worked out from itself`,
        "facts, points, and states that do not rest on this one",
        "take it out of the conditions it leads to",
      );
  }
}

/** Tells a contradiction that speaks of contested points: a position is an opinion and contradicts no fact. */
export function checkFactsOnly(when: Condition, scope: Scope, within: readonly string[]): void {
  for (const word of wordsIn(when))
    for (const name of [word.text, ...statesBehind(word.text, scope)])
      if (scope.get(name)?.kind === "contested")
        scope.fault(
          word,
          name === word.text ? `"${name}" in a contradiction` : `"${word.text}" rests on the contested point "${name}"`,
          "facts, and states that rest on facts alone",
          "a position is an opinion and contradicts no fact",
          within,
        );
}

function statesBehind(name: string, scope: Scope): readonly string[] {
  const found = scope.get(name);
  if (found?.kind !== "state") return [];
  return found.values.flatMap(({ when }) => (when === undefined ? [] : restsOn(namesIn(when), scope)));
}

function wordsIn(condition: Condition): readonly Word[] {
  if (condition.kind === "always") return [];
  return "of" in condition ? condition.of.flatMap(wordsIn) : [condition.name];
}
