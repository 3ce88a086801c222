import { type Compiled, compile, type EditionId } from "@good-grounds/core";
import type { Topic } from "./topic.ts";

const DONE = new WeakMap<Topic, Map<EditionId, Compiled>>();

/** A topic ready to be asked under an edition; built once. */
export function compiledTopic(topic: Topic, edition: EditionId): Compiled {
  const editions = DONE.get(topic) ?? new Map<EditionId, Compiled>();
  DONE.set(topic, editions);
  const known = editions.get(edition);
  if (known !== undefined) return known;
  const made = compile(topic, edition);
  editions.set(edition, made);
  return made;
}
