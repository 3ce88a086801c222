import { PRECAUTIONS } from "@good-grounds/inspection/precautions";
import { join, membersOf } from "../../record/document.ts";
import type { Value } from "../../record/entry.ts";
import type { Record as JobRecord } from "../../record/record.ts";
import { momentNow } from "../../shell/job.ts";
import type { Stage } from "../../words/cautions.ts";

export type Step = (typeof PRECAUTIONS)[number];

/** A step that was confirmed. */
export interface Confirmed {
  readonly place: string;
  readonly outcome: "done" | "not-applicable";
  readonly at: string;
  readonly by: string | undefined;
}

const LIST = "precautions";

export function stepsOf(stage: Stage): readonly Step[] {
  return PRECAUTIONS.filter((step) => step.startsWith(`${stage}.`));
}

/** Every step that was confirmed. Of a step confirmed by two people the later one is shown; both stay in the history. */
export function confirmedSteps(record: JobRecord): ReadonlyMap<string, Confirmed> {
  const found = new Map<string, Confirmed>();
  for (const name of membersOf(record, LIST)) {
    const place = join(LIST, name);
    for (const { value } of record.standing(place)) {
      const { step, outcome, at, by } = (value ?? {}) as { readonly [name: string]: Value };
      if (typeof step !== "string" || typeof at !== "string") continue;
      const earlier = found.get(step);
      if (earlier !== undefined && earlier.at > at) continue;
      found.set(step, {
        place,
        outcome: outcome === "not-applicable" ? outcome : "done",
        at,
        by: typeof by === "string" ? by : undefined,
      });
    }
  }
  return found;
}

/** The change that confirms a step, or takes it back. */
export function confirming(
  record: JobRecord,
  step: Step,
  outcome: Confirmed["outcome"] | undefined,
  by: string,
): readonly [path: string, value: Value] {
  const place = confirmedSteps(record).get(step)?.place ?? join(LIST, step);
  if (outcome === undefined) return [place, null];
  return [place, { step, outcome, at: momentNow(), ...(by === "" ? {} : { by }) }];
}

/** Steps without which the earthing conductor stays where it is. */
export const BEFORE_EARTHING: readonly Step[] = [
  "covers.isolated",
  "covers.locked",
  "covers.second-supplies",
  "covers.tester-before",
  "covers.dead",
  "covers.tester-after",
];
