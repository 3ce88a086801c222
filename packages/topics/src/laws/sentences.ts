import { possibleSeverities, severitiesOf, statementsIn } from "@good-grounds/core";
import { fullMasks } from "./draw.ts";
import type { LawBreak, LawSubject } from "./law.ts";
import { gradeOf } from "./reading-grade.ts";

/** Grade 7 is read at about twelve. */
const HIGHEST_GRADE = 7;
const LONGEST = 240;

/** There is a plain sentence for every classification that can follow, and for no other, short and easy to read. */
export function sentencesArePlain({ topic, document, compiled }: LawSubject): readonly LawBreak[] {
  const law = "sentences";
  const reachable: string[] = [...severitiesOf(possibleSeverities(compiled, fullMasks(compiled)))];
  if (reachable.length > 1 && (reachable.includes("C2") || reachable.includes("C1"))) reachable.push("FI");
  const said = Object.entries(topic.client);
  const missing = reachable.filter((one) => !said.some(([under]) => under === one));
  const idle = said.filter(([under]) => !reachable.includes(under));
  return [
    ...missing.map((one) => ({
      law,
      topic: topic.id,
      found: `nothing is said under ${one}, which can follow`,
      expected: `a line "said ${one}:"`,
      at: document.at,
    })),
    ...idle.map(([one]) => ({
      law,
      topic: topic.id,
      found: `a sentence under ${one}, which cannot follow`,
      expected: `sentences under ${reachable.join(", ")}`,
      ...placeOf(document, (node) => node.under === one),
    })),
    ...said.flatMap(([, statements]) =>
      statementsIn(statements).flatMap(({ words }): LawBreak[] => {
        const grade = gradeOf(words);
        const place = placeOf(document, (node) => node.words === words);
        const tell = (found: string, expected: string) => ({ law, topic: topic.id, found, expected, ...place });
        return [
          ...(grade > HIGHEST_GRADE
            ? [
                tell(
                  `reading grade ${grade.toFixed(1)}: "${words}"`,
                  `at most ${HIGHEST_GRADE}: shorter sentences, shorter words`,
                ),
              ]
            : []),
          ...(words.length > LONGEST ? [tell(`${words.length} characters: "${words}"`, `at most ${LONGEST}`)] : []),
        ];
      }),
    ),
  ];
}

type Said = Extract<LawSubject["document"]["statements"][number], { kind: "said" }>;

function placeOf({ statements }: LawSubject["document"], is: (one: Said) => boolean) {
  const found = statements.find((one) => one.kind === "said" && is(one));
  return found === undefined ? {} : { at: found.at };
}
