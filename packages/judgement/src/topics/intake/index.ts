import type { Topic } from "../topic.ts";

export const INTAKE: readonly Topic[] = Object.freeze([]);
