import { ranked } from "@good-grounds/core";

/** Distance and obstacles before a bare live part. */
export const DISTANCE_FACTS = Object.freeze({
  "arms-reach": ranked({
    asks: "Is it out of arm's reach (2.5 m up, 1.25 m sideways, 0.75 m down) from every surface people stand on or climb?",
    effort: "measured",
    values: {
      beyond: "it is beyond arm's reach every way, counting what can be climbed and the long things carried there",
      "long-things": "it is beyond the reach of a hand, and long things or a climb bring people to it",
      within: "it is within arm's reach",
    },
  }),
  obstacle: ranked({
    asks: "Does an obstacle, a rail or a mesh, keep people from coming near by accident?",
    effort: "glance",
    values: {
      secured: "an obstacle that cannot be moved by accident keeps people away",
      "not-secured": "an obstacle keeps people away, and can be moved by accident",
      none: "no obstacle keeps people away",
    },
    // Not met may come from who controls the place, which is asked by itself.
    worked: { by: "obstacles", met: "secured" },
  }),
});
