import type { Topic } from "../topic.ts";

export const CABLES: readonly Topic[] = Object.freeze([]);
