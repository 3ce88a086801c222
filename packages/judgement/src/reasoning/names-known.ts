import { COMPUTATIONS, type Computation, givenFromText } from "@good-grounds/computations";
import { Reckoner } from "@good-grounds/core";
import { ITEM_IDS } from "@good-grounds/inspection";
import type { NamesKnown } from "@good-grounds/topics/laws";
import { RECORDED_PROPERTIES } from "./recorded/index.ts";

/** Names that texts of topics may speak of: checks and the matters they settle, recorded properties, items of the inspection. */
export function namesKnown(): NamesKnown {
  return {
    checks: new Map([...COMPUTATIONS].map(([id, one]) => [id, new Set(mattersOf(one))])),
    properties: new Map(RECORDED_PROPERTIES.map(({ id, values }) => [id, values])),
    items: ITEM_IDS,
  };
}

/** What a computation settles besides its own verdict, as its examples show. */
function mattersOf(one: Computation): readonly string[] {
  if (!("conclude" in one)) return [];
  return one.examples.flatMap(({ given }) => {
    const made = givenFromText(one.needs, given);
    return made.ok ? (one.conclude(made.given, new Reckoner(false)).settles ?? []).map(({ matter }) => matter.id) : [];
  });
}
