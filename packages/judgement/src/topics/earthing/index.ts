import type { Topic } from "../topic.ts";

export const EARTHING: readonly Topic[] = Object.freeze([]);
