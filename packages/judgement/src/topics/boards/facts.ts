import { ranked } from "@good-grounds/core";

/** Questions that several topics about boards ask in the same words, so that one answer reads the same everywhere. */

export const ACCESS = ranked({
  asks: "Who can get to the front of the board?",
  effort: "glance",
  values: {
    "locked-off": "the board is out of service and locked off",
    "skilled-only": "the board stands behind a lock that only skilled or instructed persons open",
    "key-about": "the board stands behind a door whose key others can get",
    anyone: "anyone can get to the board",
  },
});

/** What a hand, nose, eye and screwdriver, or a thermal picture under load, tell of a board. */
export const HEAT_OR_LOOSE = ranked({
  asks: "Any loose terminal with the board dead, or any sign of heat: brown or brittle insulation, smell, a hot spot under load?",
  effort: "opened",
  values: {
    none: "there is no sign of heat and no loose terminal",
    loose: "a terminal is loose",
    marks: "insulation or plastic is discoloured, brittle or melted",
    active: "a part is too hot to hold, smells of burning or crackles now",
  },
});
