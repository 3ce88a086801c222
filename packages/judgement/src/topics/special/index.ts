import type { Topic } from "../topic.ts";

export const SPECIAL: readonly Topic[] = Object.freeze([]);
