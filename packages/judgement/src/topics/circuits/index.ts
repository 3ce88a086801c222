import type { Topic } from "../topic.ts";
import { lightingNoCpc } from "./lighting-no-cpc.ts";

export const CIRCUITS: readonly Topic[] = Object.freeze([lightingNoCpc]);
