import type { Topic } from "../topic.ts";

export const OUTDOORS: readonly Topic[] = Object.freeze([]);
