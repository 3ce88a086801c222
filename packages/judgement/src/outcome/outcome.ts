import { type Classification, isKnownFact, type Misfit, type Outcome, type Weighing } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";
import { EDITION } from "@good-grounds/tables";
import { OWN_TOPICS, type Topics } from "@good-grounds/topics";
import type { ObservationReasoning } from "../reasoning/results.ts";
import { answeredFindings } from "./answered-findings.ts";
import { choicesBelowFacts } from "./choices-below-facts.ts";
import { dismissed } from "./dismissed.ts";
import { expectedNotProven } from "./expected-not-proven.ts";
import { openPoints } from "./open-points.ts";

/**
 * The technical outcome under the edition the report is made to. A chosen classification that makes it unsatisfactory
 * does so whatever stands open; satisfactory follows only where nothing that decides stands open. What the law asks of a
 * landlord is another matter and is not decided here. `misfits` are the readings that do not agree: whoever asks for the
 * outcome has looked for them.
 */
export function outcomeOf(
  installation: Installation,
  weighing: Weighing,
  reasoned: readonly ObservationReasoning[],
  misfits: readonly Misfit[],
  topics: Topics = OWN_TOPICS,
): Outcome {
  const { edition, observations } = installation;
  // Without an edition only what every one of them calls unsatisfactory is so.
  const rules = edition === undefined ? Object.values(EDITION) : [EDITION[edition]];
  const count: Record<Classification, number> = { C1: 0, C2: 0, C3: 0, FI: 0, none: 0 };
  const because: string[] = [];
  const open: string[] = [];
  for (const { id, choice } of observations) {
    if (choice === undefined) {
      open.push(id);
      continue;
    }
    count[choice.classification] += 1;
    if (rules.every(({ unsatisfactory }) => unsatisfactory.includes(choice.classification))) because.push(id);
  }
  const below = choicesBelowFacts(installation, reasoned);
  const answers = answeredFindings(installation, weighing, reasoned);
  const points = openPoints({ installation, weighing, reasoned, misfits, below, answers, topics });
  const isClear = points.length === 0 && edition !== undefined && isKnownFact(installation.observationsListed);
  const outcome = because.length > 0 ? "unsatisfactory" : isClear ? "satisfactory" : "not-determined";
  const remarks = [
    ...(count.FI > 0 && edition !== undefined
      ? [{ code: "further-investigation", words: EDITION[edition].furtherInvestigation }]
      : []),
    ...expectedNotProven(weighing),
  ];
  return Object.freeze({
    edition: edition ?? null,
    outcome,
    because,
    count: Object.freeze(count),
    open,
    points,
    below,
    dismissed: dismissed(installation, answers, reasoned),
    investigate: observations.flatMap(({ id, choice }) => (choice?.classification === "FI" ? [id] : [])),
    remarks,
  });
}
