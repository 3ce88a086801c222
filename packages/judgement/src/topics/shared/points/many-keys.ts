import type { ContestedPoint } from "@good-grounds/core";
import { judgedBy, PRACTICE } from "./judged-by.ts";

/** 416.2.4 asks for a key or tool and does not say how many may hold one. */
export const MANY_KEYS: ContestedPoint = Object.freeze({
  question: "Does a lock count as a layer when many people have its key?",
  positions: Object.freeze({
    "does-not-count": Object.freeze({
      words: "a lock to which many have the key is opened as if by hand",
      because: "those who open it for a meter or a broom do not know the danger, and nobody answers for it being shut",
      source: PRACTICE,
    }),
    counts: Object.freeze({
      words: "a lock is a layer, however many have the key",
      because: "416.2.4 asks that a key or tool is needed, and says nothing of how many there are",
      source: judgedBy("416.2.4"),
    }),
  }),
});
