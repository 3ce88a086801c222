import type { ContestedPoint } from "@good-grounds/core";

/** Points on which inspectors differ in several topics, in the same words wherever they bear. */

/**
 * Obstacles and placing out of reach are measures for places under the control of skilled persons (410.3.5, 417.1).
 * Elsewhere bare live metal counts as in reach; some count height or a rail as one layer all the same.
 */
export const DISTANCE: ContestedPoint = Object.freeze({
  question: "Where anyone can come, does height, distance or an obstacle count as a layer before bare live metal?",
  positions: Object.freeze({
    "does-not-count": Object.freeze({
      words: "bare live metal counts as in reach wherever skilled persons are not in control",
      because: "410.3.5 and 417.1 allow obstacles and placing out of reach only under the control of skilled persons",
    }),
    counts: Object.freeze({
      words: "height, distance or an obstacle is a layer until somebody climbs, reaches over or carries something long",
      because: "nobody touches it from where people stand, so one more event is needed",
    }),
  }),
});
