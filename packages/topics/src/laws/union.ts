import { bitsOf, possibleSeverities, SEVERITIES, severitiesOf } from "@good-grounds/core";
import { decidedBy } from "./decided.ts";
import { drawing, someKnowledge } from "./draw.ts";
import { exampleLines, type LawBreak, type LawSubject } from "./law.ts";
import { assignments, canBeAt, countOf, severityAt } from "./read-directly.ts";

/** Completions gone through for one drawn case. */
const MOST = 4000;

/** What is possible is the union over every completion, on drawn cases, the rules read directly one after the other. */
export function possibleIsUnion(subject: LawSubject, cases = 60, seed = 7671): readonly LawBreak[] {
  const { topic, compiled } = subject;
  const draw = drawing(seed);
  for (let i = 0; i < cases; i++) {
    const masks = narrowed(someKnowledge(compiled, draw));
    const completions = [...assignments(masks)].filter((values) => canBeAt(compiled, values));
    if (completions.length === 0) continue;
    const union = new Set(completions.map((values) => severityAt(compiled, values)));
    const found = severitiesOf(possibleSeverities(compiled, masks));
    const wrong = SEVERITIES.filter((one) => union.has(one) !== found.includes(one));
    if (wrong.length === 0) continue;
    const values =
      completions.find((one) => wrong.includes(severityAt(compiled, one))) ?? masks.map((mask) => bitsOf(mask)[0] ?? 0);
    return [
      {
        law: "union",
        topic: topic.id,
        found: `${found.join(" or ")} is possible`,
        expected: `${SEVERITIES.filter((one) => union.has(one)).join(" or ")}, as the rules have it one by one`,
        example: exampleLines({ compiled }, "drawn", values, severityAt(compiled, values)),
        decided: decidedBy(subject, masks),
      },
    ];
  }
  return [];
}

/** The same with the first open variables settled until few enough completions are left. */
function narrowed(masks: readonly number[]): readonly number[] {
  const few = [...masks];
  for (let i = 0; countOf(few) > MOST; i++) {
    const mask = few[i] ?? 1;
    few[i] = mask & -mask;
  }
  return few;
}
