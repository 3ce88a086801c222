import { JOINTED_FINGER } from "@good-grounds/tables";

/** The finger square to the wall, hard by the edge of the opening: how far in, and its two bends in degrees. */
export interface FingerPosture {
  /** Length of the finger behind the wall, mm. */
  readonly inserted: number;
  readonly bends: readonly [number, number];
}

const { diameter, links, bend } = JOINTED_FINGER;
const RADIUS = diameter / 2;
const [BASE, MIDDLE, TIP] = links;
const STEP = 0.25;
const DEGREES = 180 / Math.PI;

/**
 * A posture whose tip stands at a depth and an offset, mm; undefined where this one-sided posture has none. It serves to
 * draw the finger; whether a live part is reached is settled by `fingerReach`.
 */
export function fingerPosture(depth: number, offset: number): FingerPosture | undefined {
  const length = BASE + MIDDLE + TIP;
  if (offset <= 0) return depth <= length ? { inserted: depth, bends: [0, 0] } : undefined;
  const aside = offset + RADIUS;
  for (let first = BASE; first >= 0; first -= STEP) {
    const bends = bendsTo(aside, depth - first);
    if (bends === undefined) continue;
    const [one, two] = bends;
    const room = RADIUS * Math.tan(one / DEGREES / 2);
    if (one >= 0 && one <= bend && two >= 0 && two <= bend && first >= room) {
      return { inserted: first + MIDDLE + TIP, bends };
    }
  }
  return undefined;
}

/** The two bends that bring the tip to a place seen from the first joint, by the law of cosines. */
function bendsTo(aside: number, ahead: number): readonly [number, number] | undefined {
  const far = Math.hypot(aside, ahead);
  if (far > MIDDLE + TIP || far === 0) return undefined;
  const two = Math.acos(Math.max(-1, Math.min(1, (far ** 2 - MIDDLE ** 2 - TIP ** 2) / (2 * MIDDLE * TIP))));
  const toward = Math.atan2(aside, ahead);
  const one = toward - Math.atan2(TIP * Math.sin(two), MIDDLE + TIP * Math.cos(two));
  return [one * DEGREES, two * DEGREES];
}
