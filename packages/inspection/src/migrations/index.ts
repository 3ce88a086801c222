import type { Migration } from "./migration.ts";
import { v1ToV2 } from "./v1-to-v2.ts";
import { v2ToV3 } from "./v2-to-v3.ts";

export type { Migration } from "./migration.ts";

/** Every migration, in order; each starts where the one before it ends. */
export const MIGRATIONS: readonly Migration[] = Object.freeze([v1ToV2, v2ToV3]);
