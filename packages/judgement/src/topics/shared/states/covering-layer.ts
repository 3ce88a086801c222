import { all, any, is, yes } from "@good-grounds/core";
import type { SharedState } from "../shared-state.ts";

/**
 * What the covering of a live part gives by itself. Double or reinforced insulation (412.2) and insulation within a sheath
 * (412.2.4.1 for cables) are two layers, of which one event takes one. Basic insulation (416.1) is one. Damaged insulation
 * with no metal in reach still keeps a dry finger off; water bridges it.
 */
export const COVERING_LAYER: SharedState = Object.freeze({
  id: "covering-layer",
  of: "a live part",
  words: "the covering of the live part",
  values: Object.freeze({
    holds: { words: "is two layers" },
    "one-event": { words: "is one layer", when: is("covering", "basic-sound", "basic-damaged") },
    gone: {
      words: "keeps nobody off",
      when: any(is("covering", "bare"), all(is("covering", "basic-damaged"), yes("wet-or-conductive"))),
    },
  }),
});
