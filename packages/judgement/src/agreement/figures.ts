import type { AgreementFigures, ChoiceMade, ChosenBy } from "@good-grounds/core";
import { fleissKappa } from "./fleiss-kappa.ts";
import { plainer } from "./order.ts";
import { pairCounts } from "./pairs.ts";
import { twoJudges } from "./two-judges.ts";
import { usualOf } from "./usual.ts";

/** How a judge is told from another: persons by name, files by the id of the inspection. */
const JUDGE: Readonly<Record<ChosenBy, (choice: ChoiceMade) => string>> = {
  person: ({ person }) => person,
  file: ({ file }) => file,
};

/** How far choices on the same facts agree. `sets` holds all choices on each set of facts. */
export function agreementFigures(sets: readonly (readonly ChoiceMade[])[], by: ChosenBy): AgreementFigures {
  const judgeOf = JUDGE[by];
  const judged = sets.filter(({ length }) => length > 1);
  const answers = judged.map((choices) => usualOf(choices, judgeOf));
  const shared = answers.map(({ choices }) => choices).filter(({ size }) => size > 1);
  const { two, notPaired } = twoJudges(shared);
  const nameOf = by === "person" ? names(judged) : (judge: string) => judge;
  return {
    by,
    ...pairCounts(judged, judgeOf),
    several: {
      judges: new Set(shared.flatMap((set) => [...set.keys()])).size,
      kappa: fleissKappa(shared.map((set) => [...set.values()])),
    },
    varied: answers.reduce((sum, { varied }) => sum + varied, 0),
    tied: answers.reduce((sum, { tied }) => sum + tied, 0),
    two: two.map(({ judges: [first, second], ...figures }) => ({
      judges: [nameOf(first), nameOf(second)],
      ...figures,
    })),
    notPaired,
  };
}

/** Persons as they are written, in the plainest of their spellings. */
function names(sets: readonly (readonly ChoiceMade[])[]): (person: string) => string {
  const spelled = new Map<string, string>();
  for (const choices of sets) {
    for (const { person, by } of choices) spelled.set(person, plainer(by, spelled.get(person) ?? by));
  }
  return (person) => spelled.get(person) ?? person;
}
