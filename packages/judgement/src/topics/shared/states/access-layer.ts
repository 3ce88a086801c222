import { all, any, held, is } from "@good-grounds/core";
import type { SharedState } from "../shared-state.ts";

/**
 * Who is kept away. A lock on the place, kept by people who answer for it, is one layer and never more: 416 and 417 give
 * restricted access as a condition of other measures, not as a measure. Whoever unlocks is the one event.
 */
export const ACCESS_LAYER: SharedState = Object.freeze({
  id: "access-layer",
  of: "a live part",
  words: "a lock on the place",
  values: Object.freeze({
    "one-event": { words: "keeps people away until it is unlocked" },
    gone: {
      words: "keeps nobody away",
      when: any(
        is("who-comes", "anyone", "children-or-less-able"),
        all(is("who-comes", "many-keys"), held("many-keys", "does-not-count")),
        held("locked-board", "does-not-count"),
      ),
    },
  }),
});
