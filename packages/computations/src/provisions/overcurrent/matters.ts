import { matter } from "@good-grounds/core";

/** What is asked about overcurrent protection, and the questions answered. */
export const OVERCURRENT = Object.freeze({
  present: matter("overcurrent-device-present", "an overcurrent device stands at the start of every line conductor"),
  element: matter("element-as-rated", "the fuse wire, cartridge or setting is that of the rating marked"),
  fusedNeutral: matter("neutral-fused-alone", "a fuse or single-pole breaker in the neutral"),
  neutralUnfused: matter("neutral-unfused", "no fuse or single-pole breaker in the neutral"),
  aheadStandard: matter("ahead-standard", "product standard of the device ahead"),
  aheadType: matter("ahead-type", "type of the device ahead"),
  withinLimit: matter("within-selectivity-limit", "fault current against the maker's selectivity limit of the pair"),
  ratioGrades: matter("ratio-grades", "ratio of the ratings of two fuses"),
  aheadHolds: matter("ahead-holds", "fault current against the instant trip of the breaker ahead"),
  overloadGrades: matter("overload-grades", "in overload the breaker behind has opened before the one ahead must"),
  byRule: matter("grades-by-rule", "what the product standards of the two devices show"),
  grades: matter("devices-grade", "the device behind opens alone"),
  holds: matter("overcurrent-protects", "overcurrent is broken before it does harm"),
});
