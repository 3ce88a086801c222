import type { ReportInput } from "../../input.ts";
import { OPEN } from "../../locales/outcome-en.ts";
import { openPointWords } from "../../words/open-point.ts";

/** Everything that decides and that nobody has answered, worst first, with all its places. */
export function ledger(input: ReportInput) {
  return {
    title: OPEN.title,
    intro: OPEN.intro,
    list: input.outcome.points.map((point) => openPointWords(point, input, true)),
  };
}
