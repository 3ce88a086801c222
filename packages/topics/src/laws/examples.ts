import { readAnswers, reason } from "@good-grounds/core";
import { decidedBy } from "./decided.ts";
import type { LawBreak, LawSubject } from "./law.ts";

/** Every example comes out as stated. */
export function examplesComeOut(subject: LawSubject): readonly LawBreak[] {
  const { topic, document, compiled } = subject;
  return topic.examples.flatMap(({ name, facts, positions, possible, classification, missing = [] }): LawBreak[] => {
    const at = document.statements.find((one) => one.kind === "example" && one.name === name)?.at;
    const broken = (found: string, expected: string, decided: readonly string[] = []): LawBreak[] => [
      {
        law: "examples",
        topic: topic.id,
        found: `the example "${name}": ${found}`,
        expected,
        ...(at === undefined ? {} : { at }),
        decided,
      },
    ];
    const { knowledge, faults } = readAnswers(compiled, positions === undefined ? { facts } : { facts, positions });
    const [fault] = faults;
    if (fault !== undefined) return broken(`"${fault.found}" for ${fault.name}`, `one of ${fault.expected.join(", ")}`);
    const reasoned = reason(compiled, knowledge);
    const decided = decidedBy(subject, knowledge.masks);
    if (reasoned.possible.join() !== possible.join())
      return broken(`${reasoned.possible.join(" or ")} is possible`, `${possible.join(" or ")}, as it says`, decided);
    if (classification !== undefined && reasoned.classification !== classification)
      return broken(`${reasoned.classification ?? "nothing yet"} follows`, `${classification}, as it says`, decided);
    const settled = missing.filter((fact) => !reasoned.open.includes(fact));
    return settled.length === 0
      ? []
      : broken(`${settled.join(" and ")} no longer matters`, "facts that are still open", decided);
  });
}
