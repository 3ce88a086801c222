import { accessProbe } from "@good-grounds/tables";
import { type BehindOpening, type ProbeReach, passes } from "./finger-reach.ts";

const BACK_OF_HAND = accessProbe("A");
const UNLIMITED: ProbeReach = Object.freeze({ certain: Number.POSITIVE_INFINITY, possible: Number.POSITIVE_INFINITY });
const NONE: ProbeReach = Object.freeze({ certain: 0, possible: 0 });

/** Diameter in mm of the sphere that stops a rod or a wire at the end of its length. */
const STOP_SPHERE = 35;

/**
 * Depth in mm that a rigid rod or wire of a diameter and length reaches. Straight behind the opening it is its length.
 * Sideways it depends on how far it leans, which the thickness of the wall settles: then nothing is certain, and no
 * place further off than its length is possible. An opening that lets its stop sphere pass limits nothing.
 */
export function straightReach(diameter: number, length: number, { narrow, offset }: BehindOpening): ProbeReach {
  if (passes(narrow, STOP_SPHERE)) return UNLIMITED;
  if (!passes(narrow, diameter)) return NONE;
  if (offset <= 0) return { certain: length, possible: length };
  return { certain: 0, possible: offset < length ? Math.sqrt(length ** 2 - offset ** 2) : 0 };
}

/**
 * Depth in mm that the 50 mm sphere, the back of a hand, reaches: without limit where it passes, else the part of it
 * that bulges through: r − √(r² − (w/2)²), straight behind the opening only.
 */
export function sphereReach({ narrow, offset }: BehindOpening): ProbeReach {
  const radius = BACK_OF_HAND.diameter / 2;
  if (passes(narrow, BACK_OF_HAND.diameter)) return UNLIMITED;
  if (offset > 0) return NONE;
  const bulge = radius - Math.sqrt(radius ** 2 - Math.min(radius, narrow / 2) ** 2);
  return { certain: bulge, possible: bulge };
}
