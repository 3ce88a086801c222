import { matter } from "@good-grounds/core";

/** What is asked about additional protection and RCDs, and the questions answered. */
export const ADDITIONAL = Object.freeze({
  place: matter("rcd-place", "location or use"),
  riskAssessed: matter("rcd-left-out", "left out on a documented risk assessment"),
  skilledOnly: matter("skilled-users-only", "used by skilled or instructed persons only"),
  holds: matter("residual-where-asked", "an RCD of at most 30 mA where it is asked"),
  notAsked: matter("residual-not-asked", "additional protection is not asked here"),
  present: matter("residual-present", "an RCD of at most 30 mA is there"),
  sensitivity: matter("residual-sensitivity", "rated residual operating current against 30 mA"),
  deep: matter("cable-deep", "depth of the cable against 50 mm"),
  loads: matter("residual-loads", "kinds of load behind the RCD"),
  declared: matter("type-declared", "the maker of the equipment states that the type is enough"),
  typeSuits: matter("rcd-type-suits", "the type of the RCD suits its loads"),
  typeForLoad: matter("rcd-type-for-load", "the type responds to the residual current of this load"),
  feed: matter("fed-from-load-side", "a source can feed the device from its load side"),
  noFeed: matter("not-fed-from-load-side", "no source feeds the device from its load side"),
  direction: matter("device-direction", "marking of the device for one or both directions"),
  feedSuits: matter("rcd-feed-direction", "the device may be fed from both sides where it is"),
  aheadDelay: matter("rcd-ahead-delay", "delay of the RCD ahead"),
  ratioGrades: matter("rcd-ratio-grades", "rated residual operating current ahead against three times that behind"),
  grades: matter("rcds-grade", "the RCD behind opens alone"),
  leakage: matter("standing-leakage-within", "standing current at most 30 % of IΔn"),
});
