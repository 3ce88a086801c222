import { ALWAYS, bitsOf, possibleLeaves, readAnswers, ruleIn, SEVERITIES } from "@good-grounds/core";
import { decidedBy } from "./decided.ts";
import { fullMasks } from "./draw.ts";
import { exampleLines, type LawBreak, type LawSubject } from "./law.ts";
import { witness } from "./monotone.ts";

const LOWER = 2;
const HIGHER = 0;

/** There is a remedy; where it fits, every remedy can lower the severity and none raises it. */
export function remediesHelp(subject: LawSubject): readonly LawBreak[] {
  const { topic, document, compiled } = subject;
  const law = "remedies";
  if (topic.remedies.length === 0)
    return [
      {
        law,
        topic: topic.id,
        found: "no remedy",
        expected: "one or more, the cheapest adequate first",
        at: document.at,
      },
    ];
  return topic.remedies.flatMap(({ words, changes, where = ALWAYS }): LawBreak[] => {
    const at = document.statements.find((one) => one.kind === "remedy" && one.words === words)?.at;
    const placed = at === undefined ? {} : { at };
    const { faults, knowledge } = readAnswers(compiled, { facts: changes });
    const [fault] = faults;
    if (fault !== undefined)
      return [
        {
          law,
          topic: topic.id,
          found: `"${words}" makes ${fault.name} ${fault.found}`,
          expected: "a value of it",
          ...placed,
        },
      ];
    const { diagram, root, index } = compiled;
    const made = Object.keys(changes).map((name) => index.get(`fact ${name}`) ?? -1);
    const after = made.reduce(
      (node, variable) => diagram.restrict(node, variable, bitsOf(knowledge.masks[variable] ?? 1)[0] ?? 0),
      root,
    );
    const everywhere = diagram.apply((a, b) => (a > b ? LOWER : a < b ? HIGHER : 1), root, after);
    const change = diagram.apply((one, fits) => (fits === 1 ? one : 1), everywhere, ruleIn(where, compiled));
    const signs = bitsOf(possibleLeaves(compiled, change, fullMasks(compiled)));
    if (signs.includes(HIGHER)) {
      const values = witness(compiled, change, HIGHER);
      const then = made.reduce((all, one) => all.with(one, bitsOf(knowledge.masks[one] ?? 1)[0] ?? 0), values);
      const [before, now] = [values, then].map((one) => SEVERITIES[diagram.at(root, one)] ?? "none");
      return [
        {
          law,
          topic: topic.id,
          found: `"${words}" raises ${before} to ${now}`,
          expected: "a remedy that never makes it worse",
          ...placed,
          example: exampleLines({ compiled }, "after the remedy", then, before ?? "none"),
          decided: decidedBy(
            subject,
            then.map((value) => 1 << value),
          ),
        },
      ];
    }
    return signs.includes(LOWER)
      ? []
      : [
          {
            law,
            topic: topic.id,
            found: `"${words}" lowers nothing${where.op === "always" ? "" : " where it fits"}`,
            expected: "a remedy that lowers the class in some state",
            ...placed,
          },
        ];
  });
}
