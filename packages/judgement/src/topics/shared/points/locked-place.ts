import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** Live metal stands open inside a place that is kept locked. */
export const LOCKED_PLACE: ContestedPoint = Object.freeze({
  question: "Does a lock held by skilled or instructed persons count as a layer between a person and live metal?",
  positions: Object.freeze({
    counts: Object.freeze({
      words: "a lock kept by people who answer for it is a layer left",
      because: "only people who know of the danger get that far, 416.2.4 and the rules for such places",
      source: judgedBy("416.2.4"),
    }),
    "does-not-count": Object.freeze({
      words: "live metal that can be touched counts as such, lock or not",
      because: "those who open the place are then within reach with nothing between",
      source: PRACTICE,
    }),
  }),
});
