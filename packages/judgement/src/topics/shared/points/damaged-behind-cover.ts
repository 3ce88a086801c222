import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** Insulation has failed, and a sound cover is over it. */
export const DAMAGED_BEHIND_COVER: ContestedPoint = Object.freeze({
  question: "Does a sound cover make up for insulation that has failed behind it?",
  positions: Object.freeze({
    "cover-holds": Object.freeze({
      words: "behind a cover that takes a tool nobody touches it, damaged or not",
      because: "416.2 is a measure of its own: what lies behind may be bare",
      source: judgedBy("416.2.1 and 416.2.4"),
    }),
    "one-event": Object.freeze({
      words: "insulation that has failed is one event from danger, cover or not",
      because: "the cover was made for what is bare by design; what fails goes on failing, and may make the cover live",
      source: PRACTICE,
    }),
  }),
});
