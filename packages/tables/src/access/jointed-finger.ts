import type { Source } from "@good-grounds/core";
import { source } from "../sources.ts";

/** The jointed test finger as a chain of links. Lengths in mm, from the stop face to the tip; bends in degrees. */
export interface JointedFinger {
  readonly diameter: number;
  /** From the stop face to the first joint, between the joints, and from the second joint to the tip. */
  readonly links: readonly [base: number, middle: number, tip: number];
  /** How far each joint bends, both in one plane and to the same side. */
  readonly bend: number;
  /** The face that must not pass the opening, by its two sizes. */
  readonly stopFace: readonly [long: number, short: number];
  /** Length over which the end narrows; what a narrower opening lets in is never more. */
  readonly taper: number;
  readonly source: Source;
}

/**
 * Test probe B of BS EN 61032. Diameter, length, stop face and bend were read (see `accessProbe("B")`); where the
 * joints lie along the 80 mm and how the end narrows are remembered.
 */
export const JOINTED_FINGER: JointedFinger = Object.freeze({
  diameter: 12,
  links: Object.freeze([20, 30, 30] as const),
  bend: 90,
  stopFace: Object.freeze([50, 20] as const),
  taper: 10,
  source: source("BS EN 61032, test probe B", "current", "memory", {
    doubt:
      "joints 30 mm and 60 mm from the tip and the narrowing of the end are remembered; the stop face is also described as a disc of 50 mm, 20 mm thick",
  }),
});
