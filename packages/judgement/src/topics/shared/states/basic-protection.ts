import { all, any, type Expression, held, is, not, yes } from "@good-grounds/core";
import { type SharedState, stateIs } from "../shared-state.ts";
import { ACCESS_LAYER } from "./access-layer.ts";
import { COVERING_LAYER } from "./covering-layer.ts";
import { DISTANCE_LAYER } from "./distance-layer.ts";
import { ENCLOSURE_LAYER } from "./enclosure-layer.ts";

/** A measure that BS 7671 counts by itself stands around the part: an enclosure (416.2), or 417 under skilled control. */
export const AROUND_HOLDS: Expression = any(stateIs(ENCLOSURE_LAYER, "holds"), stateIs(DISTANCE_LAYER, "holds"));

/** Nothing at all stands around it. */
export const AROUND_GONE: Expression = all(
  stateIs(ENCLOSURE_LAYER, "gone"),
  stateIs(DISTANCE_LAYER, "gone"),
  stateIs(ACCESS_LAYER, "gone"),
);

/** Insulation has failed, and one holds that no cover makes up for it. */
export const FAILED_BEHIND: Expression = all(
  is("covering", "basic-damaged", "bare"),
  yes("meant-insulated"),
  held("damaged-behind-cover", "one-event"),
);

/** Sound basic insulation that is worn away where it is: what acts on it gets past whatever is around it, or nothing is. */
const WORN_AWAY: Expression = all(
  is("covering", "basic-sound"),
  any(
    is("wears", "moved", "heat-weather-rodents"),
    all(AROUND_GONE, any(is("wears", "knocks"), held("open-cores", "one-layer"))),
  ),
);

/**
 * Basic protection of one live part. Two layers, or one measure that BS 7671 counts by itself, hold: no single foreseeable
 * event takes them away. One layer holds until one event. None is live metal that can be touched now.
 *
 * - Double or reinforced insulation, or insulation in a sound sheath, holds whatever is around it (412, 416.1).
 * - A sound enclosure, and distance or an obstacle under skilled control, hold whatever is inside (416.2, 417).
 * - What stands around and is less than that (a door that a hand opens, a lid half held, a locked place) is one layer. Two
 *   of these are not added up: whoever unlocks the place is the one who opens the lid, so one event takes both.
 * - Basic insulation and one such layer are two, unless what acts on the insulation gets past it: things stored inside,
 *   heat, weather, rodents (522). Where nothing acts on it, no event is foreseeable, and it is a shortcoming alone (521.10.1).
 * - Insulation that has begun to fail is one layer and adds up with nothing that is less than a measure by itself.
 */
export const BASIC_PROTECTION_STATE: SharedState = Object.freeze({
  id: "basic-protection",
  of: "a live part",
  words: "what stands between live metal and a person",
  values: Object.freeze({
    holds: { words: "holds, and no single foreseeable event takes it away" },
    "one-event": {
      words: "holds until one foreseeable event",
      when: any(
        all(not(AROUND_HOLDS), any(stateIs(COVERING_LAYER, "gone"), is("covering", "basic-damaged"), WORN_AWAY)),
        FAILED_BEHIND,
      ),
    },
    gone: {
      words: "is gone: live metal can be touched now",
      when: all(stateIs(COVERING_LAYER, "gone"), AROUND_GONE),
    },
  }),
});
