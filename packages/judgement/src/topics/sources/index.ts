import type { Topic } from "../topic.ts";

export const SOURCES: readonly Topic[] = Object.freeze([]);
