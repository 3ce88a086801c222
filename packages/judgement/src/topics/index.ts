import { TOPICS } from "./list.ts";
import type { Topic } from "./topic.ts";

export * from "./compiled.ts";
export * from "./list.ts";
export { findTopics } from "./search/find-topics.ts";
export * from "./shared/index.ts";
export * from "./topic.ts";

const BY_ID: ReadonlyMap<string, Topic> = new Map(TOPICS.map((one) => [one.id, one]));

/** The topic with this id; undefined where there is none. */
export function topicById(id: string): Topic | undefined {
  return BY_ID.get(id);
}
