/** The days of the inspection. */
export const DAYS = ["2026-11-10", "2026-11-11"] as const;
