/** The days of the inspection. */
export const DAYS = ["2026-09-22", "2026-09-23"] as const;
