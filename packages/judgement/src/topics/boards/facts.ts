import { oneKind, ranked, yesNo } from "@good-grounds/core";

/** Questions that several topics about boards ask in the same words, so that one answer reads the same everywhere. */

export const ACCESS = ranked({
  asks: "Who can get to the front of the board?",
  effort: "glance",
  values: {
    "skilled-only": "the board stands behind a lock that only skilled or instructed persons open",
    "key-about": "the board stands behind a door whose key others can get",
    anyone: "anyone can get to the board",
  },
});

export const IN_SERVICE = oneKind({
  asks: "Is the board in service?",
  effort: "glance",
  values: { "in-service": "the board is in service", dead: "the board is out of service and locked off" },
});

/** What a hand, nose and eye, or a thermal picture under load, tell of a board. */
export const HEAT = ranked({
  asks: "Any sign of heat: brown or brittle insulation, melted plastic, smell, a hot spot under load?",
  effort: "opened",
  values: {
    none: "there is no sign of heat",
    marks: "insulation or plastic is discoloured, brittle or melted",
    active: "it is too hot to hold, smells of burning or crackles now",
  },
});

export const TERMINALS_TIGHT = yesNo({
  asks: "With the board dead, are the terminals found tight?",
  effort: "opened",
  yes: "the terminals are tight",
  no: "at least one terminal is loose",
  worse: "no",
});

/** Whether the devices can clear a short circuit at the board; the figures settle it where they are held. */
export const BREAKS_FAULT = yesNo({
  asks: "Is the fault current at the board within what the device, or the assembly as it stands, is rated to break?",
  effort: "measured",
  yes: "the fault current is within the breaking capacity that holds here",
  no: "the fault current is beyond the breaking capacity that holds here",
  worse: "no",
  worked: { by: "breaking-capacity", met: "yes", notMet: "no" },
});
