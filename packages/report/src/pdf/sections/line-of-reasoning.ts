import { cableLayers } from "../../drawings/cable-layers.ts";
import { probeDrawing } from "../../drawings/probe.ts";
import { protectionLayers } from "../../drawings/protection-layers.ts";
import type { ReportInput } from "../../input.ts";
import { LAYERS } from "../../locales/layers-en.ts";
import { REASONING } from "../../locales/reasoning-en.ts";
import { REPORT } from "../../locales/report-en.ts";
import type { Observation } from "../../words/observation-number.ts";
import {
  clientSentence,
  headline,
  type ReasonedObservation,
  type ReasoningPart,
  reasoningParts,
} from "../../words/reasoning.ts";
import { describedIn } from "../described.ts";
import type { Drawings } from "../drawings.ts";
import { legibleWidth } from "../legible.ts";
import { keptWhole } from "../whole.ts";

/** Characters of a part of the reasoning that is kept on one page. */
const KEPT_WHOLE = 1400;

/** The line of reasoning of an observation; where it names no topic, that there is none. */
export function lineOfReasoning({ reasoned }: ReportInput, observation: Observation, drawings: Drawings) {
  const one = reasoned.find((each) => each.observation === observation.id);
  if (one === undefined)
    return { plain: "", headline: "", none: REASONING.noTopic, stands: "", differs: false, parts: [], drawn: [] };
  return {
    plain: clientSentence(one),
    headline: `${headline(one)}.`,
    none: "",
    stands: REASONING.choice[one.choice],
    differs: one.choice === "differs",
    drawn: drawn(one, drawings),
    parts: reasoningParts(one)
      .filter((part, _, all) => !isToldAlready(part, all))
      .map((part) => keptWhole(part, KEPT_WHOLE)),
  };
}

/** What cannot be settled stands in the argument already, where it is open; it is told apart only where it does not. */
function isToldAlready({ heading, lines }: ReasoningPart, all: readonly ReasoningPart[]): boolean {
  if (heading !== REASONING.cannotSettle) return false;
  const argued = new Set(all.find((part) => part.heading === REASONING.argument)?.lines.map(({ words }) => words));
  return lines.every(({ words }) => argued.has(words));
}

/** Drawings of what the argument rests on, as far as the facts carry the measures. */
function drawn({ opening, cable, between }: ReasonedObservation, drawings: Drawings) {
  const shown = [
    ...(opening === undefined
      ? []
      : [
          {
            svg: probeDrawing({ ...opening, words: REASONING.openingShows[opening.verdict] }),
            // The drawing has its words below it.
            words: "",
            caption: REPORT.openingCaption,
          },
        ]),
    ...(cable === undefined
      ? []
      : [{ svg: cableLayers(cable), words: REPORT.cableWords(cable), caption: REPORT.cableCaption }]),
    // The drawing has its words beside it.
    ...(between === undefined ? [] : [{ svg: protectionLayers(between), words: "", caption: LAYERS.caption }]),
  ];
  return shown.map(({ svg, ...rest }) => ({
    ...rest,
    file: drawings.add(svg),
    width: legibleWidth(svg),
    alt: describedIn(svg),
  }));
}
