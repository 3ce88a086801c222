import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** A cover or door that a hand opens falls short of 416.2.4; the question is how near that is to danger. */
export const DOOR_ONLY_SHUTS: ContestedPoint = Object.freeze({
  question: "Is a door or cover that a hand opens a layer while it is shut?",
  positions: Object.freeze({
    counts: Object.freeze({
      words: "while it is shut nothing is touched, and one opening is the event that is needed",
      because: "it keeps hands off until somebody opens it; where children come by themselves it does not count",
      source: PRACTICE,
    }),
    "does-not-count": Object.freeze({
      words: "what a hand opens in ordinary use keeps nobody off",
      because: "416.2.4 counts only what takes a key, a tool or disconnection first; opening it is use and no event",
      source: judgedBy("416.2.4"),
    }),
  }),
});
