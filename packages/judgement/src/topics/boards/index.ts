import type { Topic } from "../topic.ts";
import { boardBlankMissing } from "./board-blank-missing.ts";

export const BOARDS: readonly Topic[] = Object.freeze([boardBlankMissing]);
