import type { ChoiceMade } from "@good-grounds/core";
import { byChoice } from "./order.ts";

/**
 * The choices in order, each once. A file read twice, or a copy of an inspection, says nothing new: what is alike in
 * everything but where it was read counts once. An amended copy differs in something and counts by itself.
 */
export function withoutCopies(choices: readonly ChoiceMade[]): readonly ChoiceMade[] {
  const sorted = [...choices].sort(byChoice);
  return sorted.filter((choice, i) => {
    const before = sorted[i - 1];
    return before === undefined || byChoice({ ...before, source: choice.source }, choice) !== 0;
  });
}
