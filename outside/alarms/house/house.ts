import type { Piece } from "../network.ts";

/** A conductor of the installation, or of the loop before it. Ω at 20 °C. */
export interface Part extends Piece {
  /** What it is a part of: a circuit by its id, or the supply. It has that one's temperature. */
  readonly of: string;
  /** Whether it has the temperature of its cable; a joint, a switch or soil has not. */
  readonly warms: boolean;
}

export type Conductor = "L" | "N" | "E";

export interface Device {
  readonly standard: string;
  readonly type?: string;
  readonly amperes: number;
  readonly kiloamperes: number;
}

export interface ResidualDevice {
  readonly id: string;
  readonly standard: string;
  readonly type: "AC" | "A" | "B";
  readonly delay: "general" | "S";
  readonly milliamperes: number;
  /** How long it takes at its rated residual current, ms; infinite: never. */
  readonly milliseconds: number;
}

export interface Cable {
  readonly kind: "flat-twin-and-cpc" | "singles" | "armoured" | "mineral";
  readonly insulation: "70C-thermoplastic" | "90C-thermosetting" | "mineral-covered";
  readonly material: "copper" | "aluminium";
  readonly line: number;
  readonly cpc: number;
  readonly arrangement: "in-cable" | "separate" | "armour" | "sheath";
  readonly methods: readonly string[];
}

export interface Circuit {
  readonly id: string;
  readonly board: string;
  readonly says: string;
  readonly load: string;
  readonly shape: "ring" | "radial" | "distribution";
  readonly sockets: boolean;
  readonly device: Device;
  /** The residual device of the board it is behind, or its own; none. */
  readonly rcd: { readonly board: string } | { readonly own: ResidualDevice } | "none";
  readonly cable: Cable;
  /** Points in their order from the board; the last of a radial is the furthest. */
  readonly points: readonly string[];
  /** True length of the cable without spurs, m: the way round a ring. */
  readonly metres: number;
  /** What it carries, A. */
  readonly amperes: number;
  /** True insulation, MΩ. */
  readonly insulation: { readonly live: number; readonly earth: number; readonly neutrals: number };
  /** Whether every point is connected the right way round, as a look and a test at each would show. */
  readonly polarity: boolean;
}

export interface Board {
  readonly id: string;
  readonly name: string;
  readonly fedFrom: "supply" | { readonly board: string; readonly circuit: string };
  readonly rcds: readonly ResidualDevice[];
  /** Whether the one residual device is ahead of all its circuits. */
  readonly whole: boolean;
  readonly switchAmperes: number;
  /** Insulation of what no circuit of the list accounts for, MΩ. */
  readonly besides: number;
}

export interface Bond {
  readonly id: string;
  readonly to: "water" | "gas" | "oil";
  readonly size: number;
  readonly metres: number;
}

export type Earthing = "TN-C-S" | "TN-S" | "TT";

/** An installation as it is. Nobody on site knows all of it. */
export interface House {
  readonly earthing: Earthing;
  readonly volts: number;
  readonly fuse: Device;
  readonly tails: number;
  readonly earthingConductor: number;
  readonly bonds: readonly Bond[];
  readonly boards: readonly Board[];
  readonly circuits: readonly Circuit[];
  readonly parts: readonly Part[];
  /** °C where the cables run. */
  readonly ambient: number;
  readonly demand: number;
}

/** Names of places: the terminals of a circuit at its board, a point, the bars of a board, the origin. */
export const place = {
  source: "source",
  origin: (conductor: "L" | "N") => `origin.${conductor}`,
  earthTerminal: "earth-terminal",
  mainEarth: "main-earth",
  soil: "soil",
  bar: (board: string, conductor: Conductor) => `${board}.bar.${conductor}`,
  end: (circuit: string, conductor: Conductor, end: "out" | "back") => `${circuit}.${conductor}.${end}`,
  at: (circuit: string, conductor: Conductor, point: number) => `${circuit}.${conductor}.${point}`,
};

/** Ω/m at 20 °C, the greatest that BS EN 60228 permits of plain copper, class 1 and 2. */
const COPPER: Readonly<Record<number, number>> = {
  1: 0.0181,
  1.5: 0.0121,
  2.5: 0.00741,
  4: 0.00461,
  6: 0.00308,
  10: 0.00183,
  16: 0.00115,
  25: 0.000727,
};

/** Aluminium carries 61 % of what copper of the size does. */
const ALUMINIUM_OVER_COPPER = 1.64;

/** Ω/m at 20 °C of a conductor of this size at the maximum of its standard. */
export function permittedPerMetre(size: number, material: "copper" | "aluminium" = "copper"): number {
  const copper = COPPER[size];
  if (copper === undefined) throw new Error(`no conductor of ${size} mm² is known`);
  return material === "copper" ? copper : copper * ALUMINIUM_OVER_COPPER;
}

/** Ω/m at 20 °C of the steel wire armour of two-core cables by the size of a core. */
const ARMOUR: Readonly<Record<number, number>> = { 2.5: 0.0088, 4: 0.0079, 6: 0.007, 10: 0.006, 16: 0.0037 };

/** Ω/m at 20 °C of the copper sheath of light two-core mineral cables by the size of a core. */
const SHEATH: Readonly<Record<number, number>> = { 1.5: 0.0032, 2.5: 0.0027, 4: 0.0023 };

/** Ω/m at 20 °C of the protective conductor of a cable, at most. */
export function cpcPerMetre({ arrangement, line, cpc, material }: Cable): number {
  if (arrangement === "in-cable" || arrangement === "separate") return permittedPerMetre(cpc, material);
  const found = (arrangement === "armour" ? ARMOUR : SHEATH)[line];
  if (found === undefined) throw new Error(`no ${arrangement} of a cable of ${line} mm² is known`);
  return found;
}

/** How much a conductor of copper or aluminium has gained over 20 °C. */
export function atTemperature(celsius: number): number {
  return 1 + 0.00393 * (celsius - 20);
}
