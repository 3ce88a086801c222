import type { ReportInput } from "../../input.ts";
import { REASONING } from "../../locales/reasoning-en.ts";
import { clientSentence, headline, reasoningParts } from "../../words/reasoning.ts";
import type { Observation } from "./observation-order.ts";

/** The line of reasoning of an observation, or next to nothing where it names no topic. */
export function lineOfReasoning({ reasoned }: ReportInput, { id, choice }: Observation) {
  const one = reasoned.find(({ observation }) => observation === id);
  if (one === undefined) return { plain: "", headline: "", stands: "", parts: [] };
  return {
    plain: clientSentence(one, choice?.classification ?? null),
    headline: `${headline(one)} (${REASONING.derived}).`,
    stands: REASONING.choice[one.choice],
    parts: reasoningParts(one),
  };
}
