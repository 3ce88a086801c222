import type { ContradictionRow } from "./row.ts";

/** Observations that state a fact otherwise than the file or a finding of the same thing has it. */
export const STATED_AGAINST_FILE: ContradictionRow = {
  id: "stated-against-file",
  find: ({ installation: { observations }, reasoned }) =>
    reasoned.flatMap(({ observation, path, against }) => {
      const reason = observations.find(({ id }) => id === observation)?.choice?.reason;
      return against.some(({ stated }) => stated !== null) ? [{ places: [path], reason }] : [];
    }),
};
