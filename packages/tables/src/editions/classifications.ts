import type { Classification, Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** What a classification stands for. */
export interface ClassificationMeaning {
  readonly meaning: string;
  readonly source: Source;
}

const MODEL_FORM = source("BS 7671 Appendix 6, by contractors' articles", "2018+A2+A3 and 2018+A4", "published");
const NO_DEPARTURE = source("this project", "none", "common-practice");

/** The classifications of an observation, in our own words. What each does to the outcome is the edition's. */
export const CLASSIFICATION_MEANING: Readonly<Record<Classification, ClassificationMeaning>> = Object.freeze({
  C1: {
    meaning: "Someone is at risk now: made safe, or those responsible are told, at once.",
    source: MODEL_FORM,
  },
  C2: {
    meaning: "Not dangerous this minute, but one fault or foreseeable event would make it so: put right urgently.",
    source: MODEL_FORM,
  },
  C3: { meaning: "Short of the present edition without being dangerous: worth improving.", source: MODEL_FORM },
  FI: {
    meaning: "Danger could not be ruled out within the agreed extent: look into it without delay.",
    source: MODEL_FORM,
  },
  none: { meaning: "Nothing to classify.", source: NO_DEPARTURE },
});
