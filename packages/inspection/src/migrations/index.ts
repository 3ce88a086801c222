import type { Migration } from "./migration.ts";
import { v1ToV2 } from "./v1-to-v2.ts";
import { v2ToV3 } from "./v2-to-v3.ts";

export type { Migration } from "./migration.ts";

/** Every migration, in order; each starts where the one before it ends. */
export const MIGRATIONS: readonly Migration[] = Object.freeze([v1ToV2, v2ToV3]);

/** A document of any version as one of today's, and what changed on the way. */
export function toToday(document: Readonly<Record<string, unknown>>): {
  readonly document: Readonly<Record<string, unknown>>;
  readonly migrated: readonly string[];
} {
  const migrated: string[] = [];
  let current = document;
  for (const step of MIGRATIONS) {
    if (current.version !== step.from) continue;
    current = step.up(current);
    migrated.push(step.what);
  }
  return { document: current, migrated };
}
