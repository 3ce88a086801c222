import type { Topic } from "../topic.ts";

export const IDENTIFICATION: readonly Topic[] = Object.freeze([]);
