import { LAYER_STATES, type Layer, leavesOf, SEVERITIES } from "@good-grounds/core";
import { HAZARD, PROVISION, REASONING } from "../locales/reasoning-en.ts";
import type { ReasonedTopic, ReasoningLine } from "./reasoned-topic.ts";
import { capital, factLine, isKnown, plain, severityWords } from "./reasoning-lines.ts";

type Route = ReasonedTopic["reasoning"]["paths"][number];

/** Leaves of a route below it; within one route a fact is said once. */
type Leaves = (names: readonly string[], depth: number, settled: boolean) => readonly ReasoningLine[];

/**
 * The routes to harm, those first that may lead to the worst, those last that are not there. `said` gathers what was
 * said, so that it is not said again below.
 */
export function routeLines(one: ReasonedTopic, said: Set<string>): readonly ReasoningLine[] {
  return [...one.reasoning.paths]
    .sort((a, b) => worstOf(b) - worstOf(a))
    .flatMap((route) => {
      // Within a route a fact is said once; the layers below it rest on the same.
      const inRoute = new Set<string>();
      const leaves: Leaves = (names, depth, settled) =>
        names.flatMap((name) => {
          // What is settled rests on what is known; what is not known stands where it is open.
          if (inRoute.has(name) || (settled && !isKnown(name, one))) return [];
          inRoute.add(name);
          said.add(name);
          return [factLine(name, one, depth)];
        });
      if (route.exists.truth === "false") return routeNotThere(route, leaves);
      if (route.exists.truth === "open" && one.reasoning.possible.length === 1)
        return routeNotNeeded(route, one, leaves);
      return routeThere(route, leaves);
    });
}

/** Rank of the worst a route may lead to; one that is not there comes last. */
function worstOf({ exists, possible }: Route): number {
  return exists.truth === "false" ? -1 : Math.max(...possible.map((severity) => SEVERITIES.indexOf(severity)));
}

function routeNotThere({ path, exists }: Route, leaves: Leaves): readonly ReasoningLine[] {
  return [plain(0, `${REASONING.noRoute(path.route)} (${HAZARD[path.hazard]})`), ...leaves(exists.because, 1, true)];
}

/** Whether it is there was not asked, since what stands between settles the same either way. */
function routeNotNeeded({ path, layers }: Route, one: ReasonedTopic, leaves: Leaves): readonly ReasoningLine[] {
  return [
    plain(0, `${REASONING.notNeeded(path.route)} (${HAZARD[path.hazard]})`),
    ...layers
      .filter(({ states, because }) => states.length === 1 && because.some((name) => isKnown(name, one)))
      .flatMap(({ layer, states, because }) => [layerLine(layer, states), ...leaves(because, 2, true)]),
  ];
}

function routeThere({ path, exists, layers, possible }: Route, leaves: Leaves): readonly ReasoningLine[] {
  const isOpen = exists.truth === "open";
  const opening = isOpen ? REASONING.openRoute(path.route) : capital(path.route);
  // Where it is open, what is known of it says how far it is there already.
  const bearing = isOpen ? factsOf(path.exists) : [];
  return [
    plain(0, `${opening} (${HAZARD[path.hazard]}): ${between(layers)} → ${severityWords(possible)}`),
    ...leaves(bearing, 1, true),
    ...leaves(exists.because, 1, !isOpen),
    ...layers.flatMap(({ layer, states, because }) => [
      layerLine(layer, states),
      ...leaves(because, 2, states.length === 1),
    ]),
  ];
}

/** How many layers are left, of which two stand for two or more. */
function between(layers: Route["layers"]): string {
  const left = layers.map(({ states }) => states.map((state) => LAYER_STATES.indexOf(state)));
  const sum = (pick: (values: readonly number[]) => number) =>
    Math.min(
      2,
      left.reduce((total, values) => total + pick(values), 0),
    );
  return REASONING.layersLeft(
    sum((values) => Math.min(...values)),
    sum((values) => Math.max(...values)),
  );
}

/** The facts that a rule speaks of. */
function factsOf(rule: Route["path"]["exists"]): readonly string[] {
  return [...new Set([...leavesOf(rule)].flatMap((leaf) => ("fact" in leaf ? [`fact ${leaf.fact}`] : [])))];
}

function layerLine(
  { words, provision, regulations = [] }: Layer,
  states: Parameters<typeof REASONING.states>[0],
): ReasoningLine {
  return plain(
    1,
    `${capital(words)} (${[PROVISION[provision], ...regulations].join(", ")}): ${REASONING.states(states)}`,
  );
}
