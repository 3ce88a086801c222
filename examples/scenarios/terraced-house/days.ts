/** The day of the inspection. */
export const DAY = "2026-10-06";
