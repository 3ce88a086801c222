/**
 * How an uncertain reading is held against a limit. `simple`: by the reading itself. `guarded`: met only where the
 * expanded uncertainty lies within the limit too, not met only where it lies beyond.
 */
export const ACCEPTANCE_RULES = ["simple", "guarded"] as const;
export type AcceptanceRule = (typeof ACCEPTANCE_RULES)[number];
