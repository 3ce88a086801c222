import type { Figure, Row } from "./rows.ts";
import { logNormal, logSum } from "./statistics/chances.ts";

/**
 * Part of circuits whose resistance no cable explains: above, by a joint, an unknown spur or a wrong length; below, by a
 * wrong length or size alone.
 */
const FAULTY_ABOVE = 0.04;
const FAULTY_BELOW = 0.01;
/** Such a reading may be off by any factor up to 10: even on a logarithmic scale. */
const ANYWHERE = -Math.log(Math.LN10);
const FAR_AWAY = Math.log(0.005);
/** Where nothing is known of a cable: resistances of final circuits lie about half an ohm. */
const USUAL = Math.log(0.5);
const USUAL_SPREAD = 1.3;
/** Spurs, points off the middle: R1+R2 of a ring is less certain than its ends. */
const RING_SPREAD = 0.15;
/** A ring has its ends read, another circuit has none. */
const RING_WITH_ENDS = Math.log(0.9);
const RING_WITHOUT = Math.log(0.1);
const ENDS_BUT_NO_RING = Math.log(0.001);

export const ROW_FIT_ASSUMED =
  "one circuit in 25 has more resistance than its cable explains (a joint, an unknown spur, a wrong length), one in 100 less, by any factor up to ten; common practice";

/** ln density of ln(value) about what is expected, with its faults. */
function fit(value: number, doubt: number, expected: number, spread: number): number {
  if (!(value > 0)) return FAR_AWAY;
  const off = Math.log(value / expected);
  const deviation = Math.hypot(spread, doubt / value);
  const sound = Math.log(1 - FAULTY_ABOVE - FAULTY_BELOW) + logNormal(off, 0, deviation);
  const part = off > 0 ? FAULTY_ABOVE : FAULTY_BELOW;
  const faulty = Math.log(part) + (Math.abs(off) < Math.LN10 ? ANYWHERE : FAR_AWAY);
  return logSum(sound, faulty);
}

/** Where a reading of nothing known lies. */
const usual = (value: number) => (value > 0 ? logNormal(Math.log(value), USUAL, USUAL_SPREAD) : FAR_AWAY);

/** How well the dead readings of one row fit the cable of another: ln likelihood. */
export function deadFit({ ring, cable }: Row, { r1, r2, r1r2 }: Row): number {
  // A row without dead readings fits any circuit.
  if (r1 === undefined && r2 === undefined && r1r2 === undefined) return 0;
  const hasEnds = r1 !== undefined && r2 !== undefined;
  const shape = hasEnds ? (ring ? RING_WITH_ENDS : ENDS_BUT_NO_RING) : ring ? RING_WITHOUT : 0;
  if (hasEnds && (ring || r1r2 === undefined)) {
    const [value, doubt] = [r1.value + r2.value, Math.hypot(r1.doubt, r2.doubt)];
    return shape + (cable === undefined ? usual(value) : fit(value, doubt, cable.line + cable.cpc, cable.spread));
  }
  if (r1r2 === undefined) return shape;
  if (cable === undefined) return shape + usual(r1r2.value);
  const both = cable.line + cable.cpc;
  return (
    shape +
    (ring
      ? fit(r1r2.value, r1r2.doubt, both / 4, Math.hypot(cable.spread, RING_SPREAD))
      : fit(r1r2.value, r1r2.doubt, both, cable.spread))
  );
}

/** How well a Zs fits the loop before a circuit, the dead readings taken to be its own and its cable: ln likelihood. */
export function liveFit({ before, cable, ring }: Row, dead: Row | undefined, zs: Figure | undefined): number {
  if (zs === undefined) return 0;
  const r1r2 = dead?.r1r2;
  if (before === undefined) return usual(zs.value);
  const share = ring ? 1 / 4 : 1;
  const part =
    r1r2 !== undefined
      ? { value: r1r2.value, doubt: r1r2.doubt }
      : cable === undefined
        ? undefined
        : {
            value: (cable.line + cable.cpc) * share,
            doubt: (cable.line + cable.cpc) * share * Math.hypot(cable.spread, ring ? RING_SPREAD : 0),
          };
  if (part === undefined) return usual(zs.value);
  return fit(zs.value, Math.hypot(zs.doubt, before.doubt, part.doubt), before.value + part.value, 0.01);
}
