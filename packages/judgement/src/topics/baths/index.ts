import type { Topic } from "../topic.ts";

export const BATHS: readonly Topic[] = Object.freeze([]);
