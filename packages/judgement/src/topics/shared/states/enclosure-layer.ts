import { all, any, held, is, no } from "@good-grounds/core";
import type { SharedState } from "../shared-state.ts";

/** Opened as if by hand: made so, or its lock or interlock fails, or the key is with everybody. */
const BY_HAND = any(
  is("opens", "hand"),
  all(is("opens", "interlock", "key"), no("lock-works")),
  all(
    is("opens", "key"),
    any(
      is("who-comes", "anyone", "children-or-less-able"),
      all(is("who-comes", "many-keys"), held("many-keys", "does-not-count")),
    ),
  ),
);

/** Covers that the note to 416.2.4 leaves out come off by hand and are as made. */
const OPENED_FREELY = all(BY_HAND, no("allowed-opening"));

/** A finger at live metal; at a contact that is free while a lamp is changed, as one holds of it. */
const REACHED = any(
  is("gets-in", "hand"),
  all(is("gets-in", "finger"), any(no("allowed-opening"), held("lamp-contact", "in-reach"))),
);

/**
 * Barrier or enclosure. It holds where no finger reaches live metal (416.2.1), it is whole and firm (416.2.3) and it opens
 * by tool, key, disconnection first, or onto a further barrier (416.2.4): that is what BS 7671 counts as basic protection
 * by itself, so no second layer is asked of it. It holds until one event where it is part held, loose or has a hole that
 * no finger gets through to live metal, or where a hand opens it. A door that hangs, or stands open, is none.
 */
export const ENCLOSURE_LAYER: SharedState = Object.freeze({
  id: "enclosure-layer",
  of: "a live part",
  words: "what is around it",
  values: Object.freeze({
    holds: { words: "keeps everybody off, and opens only on purpose" },
    "one-event": {
      words: "keeps hands off until it is opened or gives way",
      when: all(no("barrier-behind"), any(is("fixing", "part-held", "loose", "hole"), OPENED_FREELY)),
    },
    gone: {
      words: "keeps nobody off",
      when: any(
        REACHED,
        all(
          no("barrier-behind"),
          any(
            is("opens", "stands-open"),
            is("fixing", "open"),
            no("hinges-carry"),
            all(
              OPENED_FREELY,
              any(held("door-only-shuts", "does-not-count"), is("who-comes", "children-or-less-able")),
            ),
          ),
        ),
      ),
    },
  }),
});
