import { matter } from "../../terms/term.ts";

/** How a length was found, best first. */
export const LENGTH_METHODS = ["taped", "by-drawing", "estimated"] as const;
export type LengthMethod = (typeof LENGTH_METHODS)[number];

/** What a conductor runs in or through. */
export const SURROUNDINGS = [
  "air",
  "masonry",
  "plaster",
  "partition",
  "thermal-insulation",
  "metal-conduit",
  "plastic-conduit",
  "metal-trunking",
  "plastic-trunking",
  "tray-or-ladder",
  "ground",
  "water",
] as const;
export type Surrounding = (typeof SURROUNDINGS)[number];

/** What is asked about a section of conductors. */
export const SECTION_MATTER = Object.freeze({
  lengthMethod: matter("length-method", "how the length was found"),
  layer: matter("section-layer", "outermost sound layer of the conductors"),
  surroundings: matter("section-surroundings", "what the conductors run in"),
  mechanical: matter("section-mechanical", "mechanical protection where it can be struck"),
});
