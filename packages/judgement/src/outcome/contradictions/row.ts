import type { ContradictionId, Misfit, Path, Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import type { ObservationReasoning } from "../../reasoning/results.ts";

/** Everything two records can be held against each other with. */
export interface Recorded {
  readonly installation: Installation;
  readonly weighing: Weighing;
  readonly reasoned: readonly ObservationReasoning[];
  readonly misfits: readonly Misfit[];
}

/** Records that cannot all stand. */
interface Clash {
  /** Where they stand, what was ticked or said first. */
  readonly places: readonly Path[];
  /** What the person wrote where it was ticked or said; where it gives a reason, it is answered. */
  readonly reason?: string | undefined;
  /** The check that is not met, where the clash is with a finding: while that is open, this stands with it. */
  readonly check?: string;
}

/**
 * One kind of contradiction. To add one: a file beside this with its row, its id in `CONTRADICTIONS` of core, the row in
 * `rows.ts`, its words in the table of contradictions in `report/src/locales/contradictions-en.ts` (what is said twice and
 * what settles it, blaming nobody), and a case in `outside/outcome/contradictions.test.ts` with one that is close by and no
 * contradiction. What is not known contradicts nothing.
 */
export interface ContradictionRow {
  readonly id: ContradictionId;
  readonly find: (recorded: Recorded) => readonly Clash[];
}
