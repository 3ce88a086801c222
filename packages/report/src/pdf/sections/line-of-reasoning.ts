import { probeDrawing } from "../../drawings/probe.ts";
import type { ReportInput } from "../../input.ts";
import { REASONING } from "../../locales/reasoning-en.ts";
import { clientSentence, headline, reasoningParts } from "../../words/reasoning.ts";
import type { Drawings } from "../drawings.ts";
import type { Observation } from "./observation-order.ts";

/** The line of reasoning of an observation, or next to nothing where it names no topic. */
export function lineOfReasoning({ reasoned }: ReportInput, { id, choice }: Observation, drawings: Drawings) {
  const one = reasoned.find(({ observation }) => observation === id);
  if (one === undefined) return { plain: "", headline: "", stands: "", parts: [], drawing: "", shows: "" };
  const words = one.opening === undefined ? "" : REASONING.openingShows[one.opening.verdict];
  return {
    drawing: one.opening === undefined ? "" : drawings.add(probeDrawing({ ...one.opening, words })),
    shows: words,
    plain: clientSentence(one, choice?.classification ?? null),
    headline: `${headline(one)} (${REASONING.derived}).`,
    stands: REASONING.choice[one.choice],
    parts: reasoningParts(one),
  };
}
