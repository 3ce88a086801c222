import type { ChoiceMade, Classification } from "@good-grounds/core";
import { tally } from "./tally.ts";

/** What each judge usually chose on one set of facts. */
export interface Usual {
  readonly choices: ReadonlyMap<string, Classification>;
  /** Judges whose usual choice was not their only one. */
  readonly varied: number;
  /** Judges without a usual choice: two or more classifications chosen equally often. */
  readonly tied: number;
}

/**
 * One classification of each judge on a set of facts, however often they met it, since a judge counts once: the one
 * chosen more often than any other. Where two are chosen equally often there is none, and the judge is left out of it.
 */
export function usualOf(choices: readonly ChoiceMade[], judgeOf: (choice: ChoiceMade) => string): Usual {
  const all = new Map<string, ChoiceMade[]>();
  for (const choice of choices) {
    const own = all.get(judgeOf(choice)) ?? [];
    all.set(judgeOf(choice), own);
    own.push(choice);
  }
  const usual = new Map<string, Classification>();
  let varied = 0;
  let tied = 0;
  for (const [judge, own] of all) {
    const [first, second] = [...tally(own, ({ classification }) => classification)].sort(([, m], [, n]) => n - m);
    if (first === undefined) continue;
    if (second !== undefined && second[1] === first[1]) tied += 1;
    else {
      usual.set(judge, first[0]);
      if (second !== undefined) varied += 1;
    }
  }
  return { choices: usual, varied, tied };
}
