import { type Compiled, compile } from "@good-grounds/core";
import type { Topic } from "./topic.ts";

const DONE = new WeakMap<Topic, Compiled>();

/**
 * Every question asked leaves nodes in the diagram of its topic. Beyond so many it is built anew, well before it is full:
 * one more question about the largest topic makes a few thousand.
 */
const MOST_KEPT = 100_000;

/** A topic ready to be asked; kept until its diagram has grown large. */
export function compiledTopic(topic: Topic): Compiled {
  const known = DONE.get(topic);
  if (known !== undefined && known.diagram.count < MOST_KEPT) return known;
  const made = compile(topic);
  DONE.set(topic, made);
  return made;
}
