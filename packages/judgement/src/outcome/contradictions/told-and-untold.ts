import type { ContradictionRow } from "./row.ts";

/** Somebody was told of danger, and a reason why nobody could be. */
export const TOLD_AND_UNTOLD: ContradictionRow = {
  id: "told-and-untold",
  find: ({ installation: { observations } }) =>
    observations.flatMap(({ madeSafe, untold }, i) =>
      madeSafe !== undefined && untold !== undefined ? [{ places: [["observations", i]] }] : [],
    ),
};
