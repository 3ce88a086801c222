import type { ContradictionRow } from "./row.ts";

/** Words that ask for it to be made safe without delay. */
const NOW = /\b(mak(e|ing)|made)\b[^.;]*\bsafe\b[^.;]*\b(now|at once|immediately|without delay|today|urgently)\b/i;
const AT_ONCE = /\b(now|at once|immediately|without delay|today|urgently)\b[^.;]*\b(mak(e|ing)|made)\b[^.;]*\bsafe\b/i;

/** Danger that is recorded as made safe, and a remedy that asks for it to be made safe now. */
export const MADE_SAFE: ContradictionRow = {
  id: "made-safe-and-to-make-safe",
  find: ({ installation: { observations } }) =>
    observations.flatMap(({ madeSafe, remedy = "" }, i) =>
      madeSafe !== undefined && (NOW.test(remedy) || AT_ONCE.test(remedy)) ? [{ places: [["observations", i]] }] : [],
    ),
};
