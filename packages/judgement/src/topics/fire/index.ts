import type { Topic } from "../topic.ts";

export const FIRE: readonly Topic[] = Object.freeze([]);
