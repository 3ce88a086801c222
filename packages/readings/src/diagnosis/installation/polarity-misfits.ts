import { type Fact, isKnownFact, type Misfit } from "@good-grounds/core";
import type { Installation } from "@good-grounds/inspection";

type Polarity = Fact<"correct" | "incorrect">;

const isWord = (fact: Polarity, word: "correct" | "incorrect") => isKnownFact(fact) && fact.word === word;

/** Odds of what follows without any number: one of the entries is wrong. */
const CERTAIN = 3;

/**
 * Polarity that is wrong at one place and right at every place behind it. A live test behind a reversed supply shows the
 * reversal too; what was found by dead tests does not.
 */
export function polarityMisfits({ supply, boards, circuits }: Installation): readonly Misfit[] {
  const found: Misfit[] = [];
  const held = (at: Misfit["path"], title: string, before: Polarity, behind: readonly Polarity[]) => {
    const right = behind.filter((one) => isWord(one, "correct"));
    if (!isWord(before, "incorrect") || right.length === 0) return;
    if (behind.some((one) => isWord(one, "incorrect"))) return;
    found.push({
      kind: "polarity",
      path: at,
      title,
      odds: CERTAIN,
      clear: true,
      readings: [],
      explanations: [
        {
          id: "behind-by-dead-tests",
          words: "polarity behind was confirmed by dead tests only, which a reversed supply does not show in",
          share: 0.5,
          innocent: true,
          would: [],
        },
        { id: "entry-wrong", words: "one of the entries is wrong", share: 0.3, innocent: true, would: [] },
        {
          id: "reversed-twice",
          words: "line and neutral are reversed twice, before and behind",
          share: 0.2,
          innocent: false,
          would: [],
        },
      ],
      toldApart: false,
      next: {
        id: "live",
        words: "prove line, neutral and earth live at the place that reads incorrect and at one circuit behind it",
        expects: [
          { explanation: "behind-by-dead-tests", words: "reversed at both" },
          { explanation: "entry-wrong", words: "right at both" },
        ],
      },
      innocentCauses: ["reversal found and put right before the circuits were tested"],
      formula: "polarity before a place is polarity at it",
      grounds: [before, ...right.slice(0, 12)],
    });
  };
  held(supply.path, "Polarity is incorrect at the origin and correct everywhere behind", supply.polarity, [
    ...boards.map((board) => board.polarity),
    ...circuits.map((circuit) => circuit.readings.polarity),
  ]);
  for (const board of boards) {
    held(
      board.path,
      `${board.name}: polarity is incorrect at the board and correct on all its circuits`,
      board.polarity,
      board.circuits.map((circuit) => circuit.readings.polarity),
    );
  }
  return found;
}
