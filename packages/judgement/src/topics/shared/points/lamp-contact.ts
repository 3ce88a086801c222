import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** A finger gets at the contact of a lampholder without a lamp; 416.2.1 lets openings be larger while a part is replaced. */
export const LAMP_CONTACT: ContestedPoint = Object.freeze({
  question:
    "Does the contact of an empty lampholder, or of a part that is changed in use, count as live metal in reach?",
  positions: Object.freeze({
    allowed: Object.freeze({
      words: "the contact of a whole lampholder is no live metal in reach",
      because: "416.2.1 allows a larger opening while a lamp is changed, and people know what is in it",
      source: judgedBy("416.2.1"),
    }),
    "in-reach": Object.freeze({
      words: "a holder left without a lamp is live metal in reach",
      because: "the allowance is for the moment of changing, and a holder that stays empty is not being changed",
      source: PRACTICE,
    }),
  }),
});
