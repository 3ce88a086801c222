import { perMetre } from "./cable.ts";
import type { Chance } from "./chance.ts";
import type { TrueCircuit } from "./installation.ts";

/** Loop impedances at a place, Ω. */
export interface Loop {
  readonly earth: number;
  readonly neutral: number;
}

/** What is truly there to be read on a circuit, in Ω, before any instrument. */
export interface TrueReadings {
  readonly ring?: {
    readonly r1: number;
    readonly rn: number;
    readonly r2: number;
    readonly points: readonly { readonly lineNeutral: number; readonly lineCpc: number }[];
  };
  readonly r1r2: number;
  readonly zs: number;
  /** The loop at the far end, which is the loop before a board fed from here. */
  readonly atEnd: Loop;
}

/**
 * A point of a ring whose conductors are cross-connected at the board, between the two of them, in Ω: `a` and `b` end to
 * end, the point at part `x` of the length. Both ways round lead over a part of one conductor and the rest of the other.
 */
export function crossConnected(a: number, b: number, x: number): number {
  const oneWay = x * a + (1 - x) * b;
  const otherWay = (1 - x) * a + x * b;
  return inParallel(oneWay, otherWay);
}

function inParallel(a: number, b: number): number {
  return (a * b) / (a + b);
}

/** The resistances of one circuit behind a loop. Every conductor is drawn by itself: no two are alike. */
export function readingsOf(circuit: TrueCircuit, before: Loop, celsius: number, chance: Chance): TrueReadings {
  const { cable, shape, spur = 0, joint = 0 } = circuit;
  const line = perMetre(cable.line, celsius, chance);
  const neutral = perMetre(cable.line, celsius, chance);
  const cpc = perMetre(cable.cpc, celsius, chance);
  const [r1, rn, r2] = [line * cable.length, neutral * cable.length, cpc * cable.length];
  // Half way round a ring both halves are in parallel, there and back; the furthest point may be at the end of a spur.
  const share = shape === "ring" ? 1 / 4 : 1;
  const farLine = r1 * share + spur * line;
  const farNeutral = rn * share + spur * neutral;
  const farCpc = r2 * share + spur * cpc + joint;
  // Bonding is disconnected for the dead tests; in the loop test every way to earth takes part.
  const earthWay = circuit.parallelPath === undefined ? farCpc : inParallel(farCpc, circuit.parallelPath);
  const zs = before.earth + farLine + earthWay;
  const points = (circuit.ringPoints ?? []).map((x, i, all) => {
    const beyond = i === all.length - 1 ? spur : 0;
    return {
      lineNeutral: crossConnected(r1, rn, x) + beyond * (line + neutral),
      lineCpc: crossConnected(r1, r2, x) + beyond * (line + cpc),
    };
  });
  return {
    ...(shape === "ring" ? { ring: { r1, rn, r2, points } } : {}),
    r1r2: farLine + farCpc,
    zs,
    atEnd: { earth: zs, neutral: before.neutral + farLine + farNeutral },
  };
}
