import type { Finding, Worked } from "@good-grounds/core";
import type { Topic } from "@good-grounds/topics";
import type { WorkedFact } from "../results.ts";
import { keyOf } from "../spoken-of/index.ts";
import { answered, judgedPart, judgementFor, partsOf } from "./link.ts";

/**
 * What findings say of the facts of a topic, an answer for each thing of which there are findings: each bond, each RCD,
 * the circuit, the board, the supply. A finding answers nothing where the link holds it back.
 */
export function answersFromFindings(topic: Topic, findings: readonly Finding[]): readonly WorkedFact[] {
  return Object.entries(topic.facts).flatMap(([fact, { worked: link }]) => {
    if (link === undefined || link.findings === "none") return [];
    const { met: _, ...notMetOnly } = link;
    const held = link.findings === "not-met-only" ? notMetOnly : link;
    return bySubject(link, findings).flatMap((ofOne) => {
      const parts = partsOf(link).map((part) => judgedPart(part, findingFor(part, ofOne)));
      const [first] = ofOne;
      if (first === undefined) return [];
      // A thing of which the matter was not looked at is one that says nothing, and not one that is not there.
      const silent = { fact, by: link.by, value: null, judgement: first.judgement };
      return [{ ...(answered(fact, held, parts) ?? silent), of: [first.path] }];
    });
  });
}

/** The findings that a link takes together, by the thing they are about. */
function bySubject(link: Worked, findings: readonly Finding[]): readonly (readonly Finding[])[] {
  const checks = new Set(partsOf(link).map(({ by }) => by));
  const things = new Map<string, Finding[]>();
  for (const finding of findings) {
    if (!checks.has(finding.check)) continue;
    const key = keyOf(finding.path);
    things.set(key, [...(things.get(key) ?? []), finding]);
  }
  return [...things.values()];
}

function findingFor(part: Pick<Worked, "by" | "matter">, findings: readonly Finding[]): Finding | undefined {
  const made = findings.filter(({ check }) => check === part.by);
  return made.find((finding) => judgementFor(part, finding) !== undefined) ?? made[0];
}
