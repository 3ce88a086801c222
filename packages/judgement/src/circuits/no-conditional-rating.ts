import { factNotKnown, notKnown, type Path, TERM } from "@good-grounds/core";
import { MATTER } from "@good-grounds/inspection";

/** The evidence that stands where a board has no conditional rating recorded. */
export const NO_CONDITIONAL_RATING = Object.freeze({
  conditionalRating: (board: Path) => notKnown(TERM.conditionalRating, [...board, "conditionalRating"]),
  namedStandard: (board: Path) => factNotKnown(MATTER.deviceStandard, [...board, "conditionalRating"]),
  namedRated: (board: Path) => notKnown(TERM.ratedCurrent, [...board, "conditionalRating"]),
  oneMake: (board: Path) => factNotKnown(MATTER.oneMake, [...board, "conditionalRating"]),
});
