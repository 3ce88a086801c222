import type { Chance } from "../../examples/simulate/chance.ts";
import { drawRing, type Planted, type TrueRing, trueReadings } from "./simulated-ring.ts";

/** A kind of fault as it is planted, and what has to hold for it to show in the readings at all. */
export interface PlantedKind {
  readonly name: string;
  /** The threshold, in words for the table. */
  readonly threshold: string;
  readonly plant: (ring: Omit<TrueRing, "planted">, chance: Chance) => Planted;
  /** Whether the fault shows by more than the threshold. Left out: always. */
  readonly shows?: (ring: TrueRing) => boolean;
  /** Whether the readings hold anything of where it is. */
  readonly placed: boolean;
  /** What reads the same, so that no reading of this test can tell: the targets do not hold for it. */
  readonly alike?: string;
}

const CONDUCTORS = ["line", "neutral", "cpc"] as const;
const leg = (ring: Omit<TrueRing, "planted">, chance: Chance) =>
  Math.floor(chance.uniform() * (ring.points.length + 1));
const point = (ring: Omit<TrueRing, "planted">, chance: Chance) => Math.floor(chance.uniform() * ring.points.length);

const INTERCONNECTION_SHOWS = 0.05;
const ALWAYS = "always";

/** What the greatest line to neutral reading of an interconnected ring has over the least, Ω. */
function bulge(ring: TrueRing): number {
  const { lineNeutral } = trueReadings(ring);
  return Math.max(...lineNeutral) - Math.min(...lineNeutral);
}

export const PLANTED_KINDS: readonly PlantedKind[] = [
  { name: "sound", threshold: ALWAYS, plant: () => ({ kind: "sound" }), placed: false },
  ...CONDUCTORS.map(
    (conductor): PlantedKind => ({
      name: `open ${conductor}`,
      threshold: ALWAYS,
      plant: (ring, chance) => ({ kind: "open", conductors: [conductor], leg: leg(ring, chance) }),
      placed: conductor !== "neutral",
    }),
  ),
  ...[1, 2].map(
    (least): PlantedKind => ({
      name: least === 1 ? "interconnection about one point" : "interconnection",
      threshold: `line to neutral readings ${INTERCONNECTION_SHOWS} Ω apart`,
      plant: (ring, chance) => {
        const from = Math.floor(chance.uniform() * (ring.points.length - 1 - least));
        const most = ring.points.length - 1 - from - least;
        const to = from + 1 + least + (least === 1 ? 0 : Math.floor(chance.uniform() * most));
        return { kind: "interconnection", from, to, metres: chance.between(1, 15) };
      },
      shows: (ring) => bulge(ring) >= INTERCONNECTION_SHOWS,
      placed: true,
      ...(least === 1 ? { alike: "a spur at that point" } : {}),
    }),
  ),
  {
    name: "spur",
    threshold: "0.06 Ω line to neutral (about 4 m of 2.5 mm²)",
    plant: (ring, chance) => ({ kind: "spur", point: point(ring, chance), metres: chance.between(3, 12) }),
    shows: ({ planted, perMetre }) => planted.kind === "spur" && planted.metres * (perMetre[0] + perMetre[1]) >= 0.06,
    placed: true,
  },
  ...CONDUCTORS.map(
    (conductor): PlantedKind => ({
      name: `loose joint, ${conductor}`,
      // r2 is held against the line by the sizes, which say less than one conductor of a cable of another.
      threshold: conductor === "cpc" ? "0.15 Ω" : "0.10 Ω",
      plant: (ring, chance) => ({
        kind: "joint",
        conductor,
        leg: leg(ring, chance),
        ohms: 10 ** chance.between(conductor === "cpc" ? Math.log10(0.15) : -1, 0.3),
      }),
      placed: conductor !== "neutral",
    }),
  ),
  ...CONDUCTORS.map(
    (conductor): PlantedKind => ({
      name: `loose terminal, ${conductor}`,
      // In line and cpc of one size a spur adds the same to both readings of its point as a poor line connection does.
      threshold: conductor === "line" ? "0.20 Ω, cpc of a smaller size" : "0.10 Ω",
      plant: (ring, chance) => ({
        kind: "terminal",
        conductor,
        point: point(ring, chance),
        ohms: 10 ** chance.between(-1, 0.3),
      }),
      shows: ({ planted, perMetre: [line, , cpc] }) =>
        planted.kind === "terminal" && (conductor !== "line" || (planted.ohms >= 0.2 && cpc > 1.3 * line)),
      placed: true,
    }),
  ),
  ...(["line-neutral", "neutral-cpc", "line-cpc"] as const).map(
    (pair): PlantedKind => ({
      name: `swapped at a point, ${pair}`,
      threshold: ALWAYS,
      plant: (ring, chance) => ({ kind: "swapped", pair, point: point(ring, chance) }),
      placed: true,
    }),
  ),
  ...(["line-neutral", "neutral-cpc", "line-cpc"] as const).map(
    (pair): PlantedKind => ({
      name: `crossed in a leg, ${pair}`,
      threshold: ALWAYS,
      plant: (ring, chance) => ({ kind: "crossed-in-leg", pair, leg: leg(ring, chance) }),
      // Line and cpc crossed leave only the line to neutral readings, and line and neutral are alike.
      placed: pair !== "line-cpc",
    }),
  ),
  { name: "two rings crossed", threshold: ALWAYS, plant: () => ({ kind: "crossed-rings" }), placed: false },
  {
    name: "leads not nulled, r2",
    threshold: "0.10 Ω",
    plant: (_, chance) => ({ kind: "leads-not-nulled", readings: "r2", ohms: chance.between(0.1, 0.4) }),
    placed: false,
  },
  {
    name: "leads not nulled, all",
    threshold: "0.10 Ω",
    plant: (_, chance) => ({ kind: "leads-not-nulled", readings: "all", ohms: chance.between(0.1, 0.4) }),
    placed: false,
  },
  {
    name: "same ends joined",
    threshold: ALWAYS,
    plant: () => ({ kind: "same-ends-joined", pairs: ["line-neutral", "line-cpc"] }),
    placed: false,
  },
];

/** A ring with a fault of a kind that shows; drawn again until it does. */
export function plantedRing(kind: PlantedKind, chance: Chance, count = 6 + Math.floor(chance.uniform() * 9)): TrueRing {
  for (let i = 0; i < 1000; i++) {
    const ring = drawRing(chance, count);
    const planted = { ...ring, planted: kind.plant(ring, chance) };
    if (kind.shows === undefined || kind.shows(planted)) return planted;
  }
  throw new Error(`no ${kind.name} that shows among 1000`);
}

const OHMS_OF_JOINT = (chance: Chance) => 10 ** chance.between(-0.7, 0.3);

/** What may be wrong with the ring itself, one of two things at once. Sizes show: joints from 0.2 Ω, leads from 0.1 Ω. */
const ONE_OF_TWO: readonly ((ring: Omit<TrueRing, "planted">, chance: Chance) => Planted)[] = [
  ...CONDUCTORS.map(
    (conductor) =>
      (ring: Omit<TrueRing, "planted">, chance: Chance): Planted => ({
        kind: "open",
        conductors: [conductor],
        leg: leg(ring, chance),
      }),
  ),
  ...CONDUCTORS.map(
    (conductor) =>
      (ring: Omit<TrueRing, "planted">, chance: Chance): Planted => ({
        kind: "joint",
        conductor,
        leg: leg(ring, chance),
        ohms: OHMS_OF_JOINT(chance),
      }),
  ),
  ...CONDUCTORS.map(
    (conductor) =>
      (ring: Omit<TrueRing, "planted">, chance: Chance): Planted => ({
        kind: "terminal",
        conductor,
        point: point(ring, chance),
        ohms: OHMS_OF_JOINT(chance),
      }),
  ),
  (ring, chance) => ({ kind: "swapped", pair: "line-neutral", point: point(ring, chance) }),
  (_, chance) => ({ kind: "leads-not-nulled", readings: "all", ohms: chance.between(0.1, 0.4) }),
  () => ({ kind: "same-ends-joined", pairs: ["line-neutral", "line-cpc"] }),
  (ring, chance) => {
    const from = Math.floor(chance.uniform() * (ring.points.length - 3));
    const to = from + 3 + Math.floor(chance.uniform() * (ring.points.length - 3 - from));
    return { kind: "interconnection", from, to, metres: chance.between(1, 15) };
  },
];

/** A ring with two different faults of the ring at once, neither of them a spur. */
export function ringWithTwo(chance: Chance, count = 6 + Math.floor(chance.uniform() * 9)): TrueRing {
  const ring = drawRing(chance, count);
  const first = Math.floor(chance.uniform() * ONE_OF_TWO.length);
  const second = (first + 1 + Math.floor(chance.uniform() * (ONE_OF_TWO.length - 1))) % ONE_OF_TWO.length;
  const [planted, also] = [first, second].map((i) => ONE_OF_TWO[i]?.(ring, chance)) as [Planted, Planted];
  return { ...ring, planted, also };
}
