import type { AgreementFigures, ChoiceMade, PairCount } from "@good-grounds/core";
import { tally } from "./tally.ts";

type JudgeOf = (choice: ChoiceMade) => string;

/** Pairs of choices on the same set of facts, counted from how often each classification was chosen, not one by one. */
export function pairCounts(
  sets: readonly (readonly ChoiceMade[])[],
  judgeOf: JudgeOf,
): Pick<AgreementFigures, "all" | "within" | "between"> {
  const counted = sets.map((choices) => ({
    all: pairs(choices.length),
    agreed: pairsAlike(choices, ({ classification }) => classification),
    within: pairsAlike(choices, judgeOf),
    agreedWithin: pairsAlike(choices, (choice) => JSON.stringify([choice.classification, judgeOf(choice)])),
  }));
  const sum = (part: "all" | "agreed" | "within" | "agreedWithin") => counted.reduce((all, set) => all + set[part], 0);
  const all: PairCount = { pairs: sum("all"), agreed: sum("agreed") };
  const within: PairCount = { pairs: sum("within"), agreed: sum("agreedWithin") };
  return { all, within, between: { pairs: all.pairs - within.pairs, agreed: all.agreed - within.agreed } };
}

function pairsAlike(choices: readonly ChoiceMade[], keyOf: (choice: ChoiceMade) => string): number {
  return [...tally(choices, keyOf).values()].reduce((all, count) => all + pairs(count), 0);
}

function pairs(n: number): number {
  return (n * (n - 1)) / 2;
}
