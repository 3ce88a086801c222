/** What is said around readings that do not agree. */
export const MISFITS_HERE = {
  title: "Readings that do not agree",
  help: "As far as the instruments' uncertainty goes. None of this is a classification.",
  failed: "Whether the readings agree could not be found out. Open this screen again.",
} as const;
