/** Words of the parts of the visit. */
export const OVERVIEW = {
  who: "At work on this device",
  nobody: "Nobody named yet",
  change: "Change",
  open: "open",
  goOn: (title: string) => `Go on: ${title}`,
  conflicts: "Different answers to choose between",
  earlier: "Last time's file is kept aside with this job.",
  removeDemonstration: "Throw the demonstration away",
  remove: "Delete this job",
} as const;
