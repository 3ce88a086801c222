import { type Compiled, compile, type EditionId } from "@good-grounds/core";
import type { Topic } from "./topic.ts";

const DONE = new WeakMap<Topic, Map<EditionId, Compiled>>();

/**
 * Every question asked leaves nodes in the diagram of its topic. Beyond so many it is built anew, well before it is full:
 * one more question about the largest topic makes a few thousand.
 */
const MOST_KEPT = 100_000;

/** A topic ready to be asked under an edition; kept until its diagram has grown large. */
export function compiledTopic(topic: Topic, edition: EditionId): Compiled {
  const editions = DONE.get(topic) ?? new Map<EditionId, Compiled>();
  DONE.set(topic, editions);
  const known = editions.get(edition);
  if (known !== undefined && known.diagram.count < MOST_KEPT) return known;
  const made = compile(topic, edition);
  editions.set(edition, made);
  return made;
}
