import { matter } from "@good-grounds/core";

/** What is asked about overcurrent protection, and the questions answered. */
export const OVERCURRENT = Object.freeze({
  present: matter("overcurrent-device-present", "an overcurrent device stands at the start of every line conductor"),
  element: matter("element-as-rated", "the fuse wire, cartridge or setting is that of the rating marked"),
  fusedNeutral: matter("neutral-fused-alone", "a fuse or single-pole breaker in the neutral"),
  neutralUnfused: matter("neutral-unfused", "no fuse or single-pole breaker in the neutral"),
  holds: matter("overcurrent-protects", "overcurrent is broken before it does harm"),
});
