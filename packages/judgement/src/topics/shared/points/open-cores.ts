import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** Sound basic insulation in the open where nothing is likely to disturb it. */
export const OPEN_CORES: ContestedPoint = Object.freeze({
  question: "Sound single cores in the open, in a spot where nothing is likely to disturb them: improvement or danger?",
  positions: Object.freeze({
    improve: Object.freeze({
      words: "a sound length that nothing disturbs is to be improved",
      because: "the basic insulation holds, and no foreseeable event takes it away there",
      source: PRACTICE,
    }),
    "one-layer": Object.freeze({
      words: "basic insulation in the open is one layer, wherever it is",
      because: "521.10.1 wants an enclosure because basic insulation alone does not stand up to use",
      source: judgedBy("521.10.1"),
    }),
  }),
});
