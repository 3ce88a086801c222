import { resolveInstallation } from "@good-grounds/inspection";
import { diagnoseRings, lookAtRings } from "@good-grounds/readings";
import { Chance } from "../../examples/simulate/chance.ts";
import type { Planted } from "./simulated-ring.ts";
import { type RingSizes, siteFile, siteMeter, siteRing } from "./site-meter.ts";

/** What is said of rings of one kind, by how many. */
export interface Said {
  readonly rings: number;
  /** The leading explanation is a sound ring. */
  readonly sound: number;
  /** Nothing at all is listed of the ring in a weighing. */
  readonly silent: number;
  /** A joint in the protective conductor leads, and nothing else with it. */
  readonly joint: number;
  /** A joint in the protective conductor is the leading explanation or cannot be told apart from it. */
  readonly named: number;
  /** The protective conductor of another size leads, or cannot be told apart from what leads. */
  readonly size: number;
  /** Shown unasked in a weighing. */
  readonly alarm: number;
}

export interface Asked {
  readonly metres: readonly [number, number];
  readonly sizes: RingSizes;
  /** As it was written down, where that is another. */
  readonly written?: RingSizes;
  /** Ω, from and to; none for a ring without a joint. */
  readonly joint: readonly [number, number] | undefined;
  readonly accuracy: string | undefined;
}

/** Draws so many rings of one kind and says what is made of them. The same seed gives the same rings. */
export function saidOf({ metres, sizes, written = sizes, joint, accuracy }: Asked, rings: number, seed: number): Said {
  const chance = new Chance(seed);
  const count = { sound: 0, silent: 0, joint: 0, named: 0, size: 0, alarm: 0 };
  for (let i = 0; i < rings; i++) {
    const ohms = joint === undefined ? 0 : chance.between(...joint);
    const plant = (legs: number): Planted =>
      joint === undefined
        ? { kind: "sound" }
        : { kind: "joint", conductor: "cpc", leg: Math.floor(legs * chance.uniform()), ohms };
    const ring = siteRing(chance, chance.between(...metres), sizes, plant);
    const installation = resolveInstallation(siteFile(ring, siteMeter(chance), written, accuracy));
    const [look] = lookAtRings(installation);
    const listed = diagnoseRings(installation)[0];
    const kinds = (look?.stories ?? [])
      .slice(0, look?.tied)
      .map(({ faults }) =>
        faults.map((fault) => (fault.kind === "joint" ? `joint ${fault.conductor}` : fault.kind)).join(),
      );
    if (kinds[0] === "") count.sound++;
    if (listed === undefined) count.silent++;
    if (kinds[0] === "joint cpc") count.joint++;
    if (kinds.includes("joint cpc")) count.named++;
    if (kinds.includes("other-cpc")) count.size++;
    if (listed?.clear === true) count.alarm++;
  }
  return { rings, ...count };
}
