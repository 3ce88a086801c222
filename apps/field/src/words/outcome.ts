/** Words of the outcome as it stands now, and of what stands open. */
export const OUTCOME_NOW = {
  title: "What stands open",
  looking: "Looking at what stands open …",
  failed: "What stands open could not be found out. Open this screen again.",
  outcome: {
    satisfactory: "By what is recorded: satisfactory.",
    unsatisfactory: "By what is recorded: unsatisfactory.",
    "not-determined": "By what is recorded: not determined.",
  },
  open: (count: number) => `${count} ${count === 1 ? "point decides and stands" : "points decide and stand"} open:`,
  more: (count: number) => `and ${count} more`,
  signatures: {
    signed: "Signed for what stands here now.",
    changed: "Changed after it was signed: that signature does not count for what stands here now.",
    unbound: "A signature says of no content that it was signed: it does not count for what stands here now.",
  },
  below: "Chosen below what the facts stated give",
  dismissed: "Not met, and left as it is by a reason alone",
  investigate: "Not known, and to be investigated",
} as const;

/** Words of the checks that an observation answers. */
export const ANSWERS = {
  sample: "Parts found defective in a sample",
  readings: "Readings that cannot all be true",
  title: "Checks not met that this is about",
  help: "A check that is not met stays open until an observation speaks of it. Tick what this one is about.",
} as const;
