import { factNotKnown, notKnown, type Path, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";

const PATH: Path = Object.freeze(["conditionalRating"]);

/** The evidence that stands where a board has no conditional rating recorded. */
export const NO_CONDITIONAL_RATING = Object.freeze({
  conditionalRating: notKnown(TERM.conditionalRating, PATH),
  namedStandard: factNotKnown(MATTER.deviceStandard, PATH),
  namedRated: notKnown(TERM.ratedCurrent, PATH),
  oneMake: factNotKnown(MATTER.oneMake, PATH),
});
