import type { Topic } from "../topic.ts";

export const ACCESSORIES: readonly Topic[] = Object.freeze([]);
