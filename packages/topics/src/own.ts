import { ownTopics } from "./gathered.ts";
import type { Topic } from "./topic.ts";

/** Every topic of this package. All of them are read where this is imported; `OWN_TOPICS` reads what is asked for. */
export const TOPICS: readonly Topic[] = ownTopics();
