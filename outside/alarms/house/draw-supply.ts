import type { Draws } from "../draws.ts";
import { type Bond, type Earthing, type House, type Part, permittedPerMetre, place } from "./house.ts";

/** What the distributor brings, the tails, the main earth and what is bonded to it; no board yet. */
export function drawSupply(draws: Draws): House {
  const earthing = draws.weighed<Earthing>("earthing", [
    [60, "TN-C-S"],
    [22, "TN-S"],
    [18, "TT"],
  ]);
  const bonds = bondsOf(draws);
  return {
    earthing,
    volts: Math.min(252.6, Math.max(216.6, 242 + draws.bell("volts", 6))),
    fuse: { standard: "BS 1361", type: "II", amperes: draws.one("fuse", [80, 100, 100]), kiloamperes: 33 },
    tails: 25,
    earthingConductor: 16,
    bonds,
    boards: [],
    circuits: [],
    parts: [
      ...loopBefore(earthing, draws),
      ...inside(draws),
      ...bonds.flatMap((bond) => toSoil(bond, earthing, draws)),
    ],
    ambient: draws.between("ambient", 5, 28),
    demand: draws.whole("demand", 35, 75),
  };
}

const supply = (a: string, b: string, ohms: number, warms = false): Part => ({ a, b, ohms, of: "supply", warms });

function loopBefore(earthing: Earthing, draws: Draws): readonly Part[] {
  const line = draws.acrossDecades("line", 0.05, earthing === "TT" ? 0.28 : 0.17);
  const neutral = line * draws.between("neutral", 0.7, 1.05);
  const parts = [
    supply(place.source, place.origin("L"), line),
    supply(place.source, place.origin("N"), neutral),
    supply(place.source, place.soil, draws.acrossDecades("source-electrode", 1, 15)),
  ];
  switch (earthing) {
    case "TN-C-S":
      return [...parts, supply(place.origin("N"), place.earthTerminal, 0.0003)];
    case "TN-S":
      return [...parts, supply(place.source, place.earthTerminal, draws.acrossDecades("sheath", 0.08, 0.6))];
    case "TT":
      return [...parts, supply(place.soil, place.earthTerminal, draws.acrossDecades("electrode", 8, 170))];
  }
}

/** Tails, meter and main switch to the bars of the first board, and the earthing conductor. */
function inside(draws: Draws): readonly Part[] {
  const tails = permittedPerMetre(25) * draws.between("tails", 0.8, 3);
  const earthing = permittedPerMetre(16) * draws.between("earthing-metres", 0.6, 3);
  return [
    supply(place.origin("L"), place.bar("main", "L"), tails + draws.between("meter-L", 0.0008, 0.003)),
    supply(place.origin("N"), place.bar("main", "N"), tails + draws.between("meter-N", 0.0006, 0.002)),
    supply(place.earthTerminal, place.mainEarth, earthing + draws.between("earth-joint", 0.0004, 0.002)),
    supply(place.mainEarth, place.bar("main", "E"), permittedPerMetre(16) * draws.between("earth-tail", 0.3, 3)),
  ];
}

function bondsOf(draws: Draws): readonly Bond[] {
  const bond = (to: Bond["to"], often: number): readonly Bond[] =>
    draws.happens(`bond-${to}`, often)
      ? [{ id: to, to, size: 10, metres: draws.between(`bond-${to}-metres`, 1, 22) }]
      : [];
  return [...bond("water", 0.7), ...bond("gas", 0.6)];
}

/** A bonded service runs on into the street: with neighbours' earths on it where they are of metal throughout. */
function toSoil({ id, metres }: Bond, earthing: Earthing, draws: Draws): readonly Part[] {
  const far = `pipe.${id}`;
  const metal = draws.happens(`metal-${id}`, 0.35);
  const conductor = supply(place.mainEarth, far, permittedPerMetre(10) * metres + 0.002, true);
  if (!metal) return [conductor, supply(far, place.soil, draws.acrossDecades(`soil-${id}`, 30, 2000))];
  if (earthing === "TN-C-S" && draws.happens(`street-${id}`, 0.5))
    return [conductor, supply(far, place.source, draws.acrossDecades(`street-ohms-${id}`, 0.15, 4))];
  return [conductor, supply(far, place.soil, draws.acrossDecades(`soil-${id}`, 2, 60))];
}
